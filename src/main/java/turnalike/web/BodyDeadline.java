package turnalike.web;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.Scheduler;
import turnalike.web.kit.BodyLimits;

/**
 * Hangs up on a body that is not all there in time. The server's own least rate was not taken: it judges only as further parts are asked
 * for, so that who falls silent is not judged.
 */
final class BodyDeadline extends Handler.Wrapper {
    private static final long SLOWEST_FILE_BYTES_A_SECOND = 20_000;

    private final long graceMs;
    private final long slowestBytesASecond;

    /**
     * @param graceMs that every body has, however short it is
     * @param slowestBytesASecond a longer one has as much more time as it takes at this rate
     */
    BodyDeadline(long graceMs, long slowestBytesASecond) {
        this.graceMs = graceMs;
        this.slowestBytesASecond = slowestBytesASecond;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        if (request.getLength() == 0) {
            return super.handle(request, response, callback);
        }
        // One that does not say how long it is may be as long as any.
        long length = request.getLength() < 0 ? BodyLimits.most(SizedBodies.path(request)) : request.getLength();
        long most = graceMs + TimeUnit.SECONDS.toMillis(length) / slowest(length);
        EndPoint line = request.getConnectionMetaData().getConnection().getEndPoint();
        Scheduler.Task late = request.getComponents()
                .getScheduler()
                .schedule(
                        () -> line.close(new TimeoutException("the body did not come in %d ms".formatted(most))),
                        most,
                        TimeUnit.MILLISECONDS);
        Request.addCompletionListener(request, failure -> late.cancel());
        return super.handle(new Awaited(request, late), response, callback);
    }

    /** Whoever sends a photograph has a radio for it: at the rate that a few letters may come at it could take days. */
    private long slowest(long length) {
        return length > BodyLimits.TYPED
                ? Math.max(slowestBytesASecond, SLOWEST_FILE_BYTES_A_SECOND)
                : slowestBytesASecond;
    }

    /** Its deadline ends with the last of its body. */
    private static final class Awaited extends Request.Wrapper {
        private final Scheduler.Task late;

        Awaited(Request request, Scheduler.Task late) {
            super(request);
            this.late = late;
        }

        @Override
        public Content.Chunk read() {
            Content.Chunk chunk = super.read();
            if (chunk != null && chunk.isLast()) {
                late.cancel();
            }
            return chunk;
        }
    }
}
