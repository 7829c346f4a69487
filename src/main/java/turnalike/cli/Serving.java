package turnalike.cli;

import java.util.function.Consumer;
import turnalike.job.kept.JobStore;

/** The page, as the command line knows it: something that can be opened at a port. Who has the page hands it in. */
public interface Serving {
    /** What is open; closing it stops the serving. */
    interface Page extends AutoCloseable {
        /** What to open in a browser. */
        String address();

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
     * Opens the page on this machine alone.
     *
     * @param port 0 for any that is free
     * @param faults told of each fault of ours
     */
    Page open(int port, JobStore jobs, Consumer<Exception> faults) throws PortTaken;

    /** Puts into a new store what everybody begins with. */
    void begin(JobStore jobs);
}
