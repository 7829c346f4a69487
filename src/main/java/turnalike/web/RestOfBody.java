package turnalike.web;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * After an answer that was given before the body had all come, takes in what is still on its way and lets it fall. A line closed upon bytes
 * that nobody read is reset, and the reset may take the answer with it: the browser then tells of a lost line in place of what was wrong.
 */
final class RestOfBody extends Handler.Wrapper {
    private final long mostBytes;
    private final long mostMs;

    /**
     * @param mostBytes after so many the line is closed all the same
     * @param mostMs so is it after that time
     */
    RestOfBody(long mostBytes, long mostMs) {
        this.mostBytes = mostBytes;
        this.mostMs = mostMs;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        if (request.getLength() == 0) {
            return super.handle(request, response, callback);
        }
        return super.handle(new Kept(request), response, new Callback.Nested(callback) {
            @Override
            public void succeeded() {
                new Fall(request, getCallback()).run();
            }
        });
    }

    /**
     * Its rest is taken in after the answer. The server's own way to tell of an error takes in what is there before it answers, and where that is not
     * all, nobody can read on.
     */
    private static final class Kept extends Request.Wrapper {
        Kept(Request request) {
            super(request);
        }

        @Override
        public boolean consumeAvailable() {
            return true;
        }
    }

    private final class Fall implements Runnable {
        private final Request request;
        private final Callback then;
        private final AtomicBoolean over = new AtomicBoolean();
        private Optional<Scheduler.Task> late = Optional.empty();
        private long fallen;

        Fall(Request request, Callback then) {
            this.request = request;
            this.then = then;
        }

        @Override
        public void run() {
            while (!over.get()) {
                Content.Chunk chunk = request.read();
                if (chunk == null) {
                    if (late.isEmpty()) {
                        late = Optional.of(request.getComponents()
                                .getScheduler()
                                .schedule(this::end, mostMs, TimeUnit.MILLISECONDS));
                    }
                    request.demand(this);
                    return;
                }
                fallen += chunk.remaining();
                chunk.release();
                if (chunk.isLast() || Content.Chunk.isFailure(chunk) || fallen > mostBytes) {
                    end();
                }
            }
        }

        private void end() {
            if (over.compareAndSet(false, true)) {
                late.ifPresent(Scheduler.Task::cancel);
                then.succeeded();
            }
        }
    }
}
