package turnalike.web;

import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import turnalike.web.kit.BodyLimits;

/** Turns a body away that says of itself that it is too large for where it goes, in words and before any of it is waited for. */
final class SizedBodies extends Handler.Wrapper {
    private static final int TOO_LARGE = 413;

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        String path = path(request);
        if (request.getLength() <= BodyLimits.most(path)) {
            return super.handle(request, response, callback);
        }
        response.setStatus(TOO_LARGE);
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/plain; charset=utf-8");
        response.getHeaders().put(HttpHeader.CONNECTION, "close");
        Content.Sink.write(response, true, BodyLimits.tooLarge(path).line() + "\n", callback);
        return true;
    }

    static String path(Request request) {
        return String.valueOf(request.getHttpURI().getPath());
    }
}
