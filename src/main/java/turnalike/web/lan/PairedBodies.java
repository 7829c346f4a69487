package turnalike.web.lan;

import java.net.InetSocketAddress;
import java.util.Optional;
import org.eclipse.jetty.http.HttpCookie;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import turnalike.units.Problem;
import turnalike.web.kit.ForPrograms;

/** Turns a request away whose sender may not send a body, before any of the body is waited for. */
public final class PairedBodies extends Handler.Wrapper {
    private final Sharing sharing;

    public PairedBodies(Sharing sharing) {
        this.sharing = sharing;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        boolean none = request.getLength() <= 0 && !request.getHeaders().contains(HttpHeader.TRANSFER_ENCODING);
        if (none || admitted(request)) {
            return super.handle(request, response, callback);
        }
        Problem told = Sharing.NOT_PAIRED;
        response.setStatus(401);
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/plain; charset=utf-8");
        response.getHeaders().put(HttpHeader.CONNECTION, "close");
        Content.Sink.write(response, true, told.line() + "\n", callback);
        return true;
    }

    private boolean admitted(Request request) {
        if (!(request.getConnectionMetaData().getRemoteSocketAddress() instanceof InetSocketAddress from)) {
            return false;
        }
        Optional<String> secret = Request.getCookies(request).stream()
                .filter(each -> each.getName().equals(Sharing.COOKIE))
                .map(HttpCookie::getValue)
                .findFirst();
        Caller caller = new Caller(
                from.getAddress(),
                name -> request.getHeaders().getValuesList(name).stream().reduce((first, second) -> second),
                request.getConnectionMetaData().getProtocol());
        Optional<String> token = ForPrograms.isAt(
                        String.valueOf(request.getHttpURI().getPath()))
                ? ForPrograms.token(Optional.ofNullable(request.getHeaders().get(HttpHeader.AUTHORIZATION)))
                : Optional.empty();
        return sharing.admitsBody(
                caller, token.or(() -> secret), request.getHttpURI().getPath(), request.getLength());
    }
}
