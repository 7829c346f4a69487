package turnalike.web;

import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import java.util.Optional;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.handler.EagerContentHandler;
import org.eclipse.jetty.server.handler.SizeLimitHandler;
import org.eclipse.jetty.util.component.LifeCycle;
import turnalike.web.kit.BodyLimits;
import turnalike.web.lan.ConnectionCount;
import turnalike.web.lan.PairedBodies;
import turnalike.web.lan.Sharing;

/** What may come in, how much of it, how slowly, and over how many connections, before any page is asked. */
final class Doorway {
    /** Below what the slowest radio in a shop brings; a body that comes slower is given up. */
    private static final int SLOWEST_BODY_BYTES_A_SECOND = 100;

    private static final int LONGEST_SILENCE_MS = 20_000;

    /** Whoever sends more than what two of the largest files hold after an answer is not waited for. */
    private static final long MOST_LET_FALL_BYTES = 2L * BodyLimits.FILE;

    private Doorway() {}

    /** @param sharing with whom, if with any other device */
    static void arrange(JavalinConfig config, Optional<Sharing> sharing) {
        config.http.maxRequestSize = BodyLimits.TYPED;
        // How much may go where is asked before; nothing is written to a disk on its way.
        config.jetty.multipartConfig.maxFileSize(BodyLimits.FILE, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxTotalRequestSize(BodyLimits.FILE, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxInMemoryFileSize(BodyLimits.FILE, SizeUnit.BYTES);
        config.jetty.modifyHttpConfiguration(Doorway::arrange);
        config.jetty.modifyServer(server -> arrange(server, sharing));
    }

    private static void arrange(HttpConfiguration http) {
        http.setSendServerVersion(false);
        http.setIdleTimeout(LONGEST_SILENCE_MS);
    }

    private static void arrange(Server server, Optional<Sharing> sharing) {
        // Inside out. A body is waited for without a thread, and a page is asked only when it is all there.
        server.insertHandler(eager(BodyLimits.TYPED, false));
        server.insertHandler(eager(BodyLimits.FILE, true));
        // Counts what comes, whatever the request says of its length.
        server.insertHandler(new SizeLimitHandler(BodyLimits.FILE, -1));
        server.insertHandler(new SizedBodies());
        server.insertHandler(new BodyDeadline(LONGEST_SILENCE_MS, SLOWEST_BODY_BYTES_A_SECOND));
        sharing.ifPresent(each -> server.insertHandler(new PairedBodies(each)));
        server.insertHandler(new RestOfBody(MOST_LET_FALL_BYTES, LONGEST_SILENCE_MS));
        ConnectionCount count = new ConnectionCount();
        server.addEventListener(new LifeCycle.Listener() {
            @Override
            public void lifeCycleStarting(LifeCycle starting) {
                // Javalin makes the connector after this is arranged.
                for (Connector each : server.getConnectors()) {
                    each.addBean(count);
                }
            }
        });
    }

    /** Waits for a body of so many bytes at most, where files may be sent or elsewhere. */
    private static EagerContentHandler eager(int most, boolean files) {
        EagerContentHandler handler =
                new EagerContentHandler(new EagerContentHandler.RetainedContentLoaderFactory(most, 0, true));
        handler.include((Request request) -> BodyLimits.isForFiles(SizedBodies.path(request)) == files);
        return handler;
    }
}
