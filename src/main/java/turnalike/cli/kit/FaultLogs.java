package turnalike.cli.kit;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * The faults of a program that goes on after them. Each is written down the first time only, and no more than a few in all, so that somebody
 * who can bring one about fills no disk. May be used by several threads.
 */
public final class FaultLogs {
    static final int MOST = 20;

    private final Set<String> written = new HashSet<>();

    /** Writes a fault down that is new; the file's name then, and nothing of one that is known already. */
    public Optional<String> log(Exception fault) {
        return isNew(fault) ? Optional.of(FaultLog.write(fault)) : Optional.empty();
    }

    /** Two faults are one when they are of a kind and come from the same line. */
    private synchronized boolean isNew(Exception fault) {
        String where = Arrays.stream(fault.getStackTrace())
                .findFirst()
                .map(StackTraceElement::toString)
                .orElse("nowhere");
        return written.size() < MOST && written.add(fault.getClass().getName() + " at " + where);
    }
}
