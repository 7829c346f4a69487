package turnalike.cli.kit;

import java.io.PrintWriter;
import turnalike.effort.Progress;
import turnalike.units.PlainNumber;

/**
 * Whoever waits for a long search: on a terminal they see how far it has come, and with Ctrl-C (or any signal that ends the program) they
 * take what is found by then. The program's end is held back until that is printed.
 */
public final class ConsoleProgress implements AutoCloseable {
    /** Set by the start script when standard error is a terminal: Java itself does not know before 22. */
    private static final String ON_TERMINAL = "turnalike.terminal";

    /** Writing all the sheets takes a few seconds. */
    private static final long LONGEST_PRINTING_S = 30;

    private final PrintWriter err;
    private final boolean onTerminal;
    private final ShutdownHook end;
    private int shown;

    private ConsoleProgress(PrintWriter err, boolean onTerminal) {
        this.err = err;
        this.onTerminal = onTerminal;
        this.end =
                ShutdownHook.hooked(LONGEST_PRINTING_S, () -> err.println("turnalike: stopped before all was printed"));
    }

    public static ConsoleProgress at(PrintWriter err) {
        return at(err, Boolean.getBoolean(ON_TERMINAL));
    }

    public static ConsoleProgress at(PrintWriter err, boolean onTerminal) {
        return new ConsoleProgress(err, onTerminal);
    }

    /** Whether the search is to end with what it has. */
    public boolean hasEnough() {
        return end.isAsked();
    }

    /** Shows how far the search has come, in the place of what was shown before. */
    void show(Progress progress) {
        if (onTerminal) {
            String line = "%s: %s found, at least %s; Ctrl-C takes what is found"
                    .formatted(progress.what(), figure(progress.best()), figure(progress.bound()));
            err.print("\r" + line + " ".repeat(Math.max(0, shown - line.length())));
            err.flush();
            shown = line.length();
        }
    }

    /** Clears the line away, for the result to be printed. */
    public void found() {
        if (shown > 0) {
            err.print("\r" + " ".repeat(shown) + "\r");
            err.flush();
            shown = 0;
        }
    }

    private static String figure(double value) {
        return PlainNumber.toFigures(value, 4);
    }

    /** All is printed. */
    @Override
    public void close() {
        found();
        end.closed();
    }
}
