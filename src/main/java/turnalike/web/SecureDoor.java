package turnalike.web;

import java.io.IOException;
import java.net.URI;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.SecureRandom;
import java.security.cert.Certificate;
import java.util.Base64;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpURI;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.DetectorConnectionFactory;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import turnalike.reach.OwnCertificate;

/** The port where what passes is encrypted. Who speaks to it without is sent to the address that is. */
final class SecureDoor {
    private SecureDoor() {}

    static Connector connector(
            Server server, HttpConfiguration http, OwnCertificate certificate, String host, int port) {
        SecureRequestCustomizer secure = new SecureRequestCustomizer();
        // By which name it is asked is checked by the gate, in words; and this machine may ask by its own.
        secure.setSniHostCheck(false);
        http.addCustomizer(secure);
        HttpConnectionFactory plain = new HttpConnectionFactory(http);
        SslConnectionFactory encrypted = new SslConnectionFactory(context(certificate), plain.getProtocol());
        // What is not recognised as encrypted goes to the one after it.
        ServerConnector connector = new ServerConnector(server, new DetectorConnectionFactory(encrypted), plain);
        connector.setHost(host);
        connector.setPort(port);
        return connector;
    }

    private static SslContextFactory.Server context(OwnCertificate certificate) {
        // Never written anywhere: it locks what stands in memory only.
        byte[] drawn = new byte[24];
        new SecureRandom().nextBytes(drawn);
        String lock = Base64.getEncoder().encodeToString(drawn);
        try {
            KeyStore keys = KeyStore.getInstance("PKCS12");
            keys.load(null, null);
            keys.setKeyEntry(
                    "turnalike",
                    certificate.key(),
                    lock.toCharArray(),
                    certificate.chain().toArray(Certificate[]::new));
            SslContextFactory.Server context = new SslContextFactory.Server();
            context.setKeyStore(keys);
            context.setKeyStorePassword(lock);
            context.setSniRequired(false);
            return context;
        } catch (GeneralSecurityException | IOException impossible) {
            throw new IllegalStateException("a certificate and its key were checked already", impossible);
        }
    }

    /** Sends on who speaks plainly, before anything he sends is waited for. */
    static final class Plain extends Handler.Wrapper {
        private static final int PERMANENT = 308;
        private static final int MISDIRECTED = 421;

        private final Supplier<Set<String>> origins;

        Plain(Supplier<Set<String>> origins) {
            this.origins = origins;
        }

        @Override
        public boolean handle(Request request, Response response, Callback callback) throws Exception {
            if (request.isSecure()) {
                return super.handle(request, response, callback);
            }
            response.getHeaders().put(HttpHeader.CONNECTION, "close");
            response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/plain; charset=utf-8");
            Optional<String> here = secure(request);
            response.setStatus(here.isPresent() ? PERMANENT : MISDIRECTED);
            here.ifPresent(each -> response.getHeaders().put(HttpHeader.LOCATION, each));
            Content.Sink.write(
                    response,
                    true,
                    "address: this port is served encrypted; open the address the program printed, with https\n",
                    callback);
            return true;
        }

        /** The same address, encrypted, if it is one of ours. */
        private Optional<String> secure(Request request) {
            HttpURI asked = request.getHttpURI();
            String origin =
                    "https://" + Optional.ofNullable(asked.getAuthority()).orElse("");
            return origins.get().contains(origin)
                    ? Optional.of(origin + URI.create(asked.getPathQuery()))
                    : Optional.empty();
        }
    }
}
