package turnalike.cli.page;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine.Model.CommandSpec;
import turnalike.job.kept.JobStore;
import turnalike.reach.Outside;
import turnalike.release.Renewal;

/** The page, as the command line knows it: something that can be opened at a port. Who has the page hands it in. */
public interface PageServer {
    /** What is open; closing it stops the serving. */
    interface Page extends AutoCloseable {
        /** What to open in a browser. */
        String address();

        /** What to open on other devices; empty when it is not shared. */
        List<String> otherAddresses();

        @Override
        void close();
    }

    /** Nobody can be served at that port. */
    final class PortTaken extends Exception {
        private static final long serialVersionUID = 1L;

        public PortTaken(Throwable cause) {
            super(cause);
        }
    }

    /**
     * How it is shared with other devices.
     *
     * @param devices the file that remembers which are paired
     * @param code told of every code that pairs a device, to show it
     */
    record Shared(Path devices, Consumer<String> code) {}

    /**
     * Who is served where.
     *
     * @param port 0 for any that is free
     * @param shared with other devices; without it this machine alone is served
     * @param outside by which addresses, and whether encrypted
     * @param renewal what its user is to read of this release, if the store has a place to remember it
     */
    record Reach(int port, Optional<Shared> shared, Outside outside, Optional<Renewal> renewal) {}

    /**
     * Opens the page.
     *
     * @param faults told of each fault of ours
     */
    Page open(Reach reach, JobStore jobs, Consumer<Exception> faults) throws PortTaken;

    /**
     * A device that was paired.
     *
     * @param id what it is shown out by
     * @param name what its owner called it
     * @param paired when
     * @param role what it may do, in words
     */
    record Paired(String id, String name, Instant paired, String role) {}

    /** The paired devices of a store; what is changed counts from a device's next request on, also where a program serves meanwhile. */
    interface DeviceBook {
        List<Paired> list();

        /** False when there is none of that id. */
        boolean showOut(String id);

        /** Makes a token for a program of that name, told this once; empty for what is no device's name. */
        Optional<String> token(String name, boolean patterns);

        /** Lets it change patterns, or only log and turn; false when there is none of that id. */
        boolean allow(String id, boolean patterns);
    }

    /** The devices that this file remembers. */
    DeviceBook devices(Path file);

    /** Who was handed the page: the program that a command is part of. */
    interface Provider {
        PageServer serving();
    }

    /** The page, for one of the program's commands. */
    static PageServer of(CommandSpec spec) {
        return ((Provider) spec.root().userObject()).serving();
    }

    /** Puts into a new store what everybody begins with. */
    void begin(JobStore jobs);
}
