package turnalike.reach;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Optional;

/**
 * The address by which a server before the program is known, as a browser names it: {@code https://turn.example.org}.
 *
 * @param origin scheme, name in small letters, and the port where it is not the scheme's own; no path
 */
public record PublicAddress(String origin) {
    /**
     * {@return the address, or nothing when the text is none: it must begin with http:// or https:// and bear a name, and no path}
     *
     * @param text as typed
     */
    public static Optional<PublicAddress> parse(String text) {
        try {
            URI uri = new URI(text.strip());
            String scheme = Optional.ofNullable(uri.getScheme()).orElse("").toLowerCase(Locale.ROOT);
            String host = Optional.ofNullable(uri.getHost()).orElse("").toLowerCase(Locale.ROOT);
            String path = Optional.ofNullable(uri.getRawPath()).orElse("");
            boolean bare = (path.isEmpty() || path.equals("/"))
                    && uri.getRawQuery() == null
                    && uri.getRawFragment() == null
                    && uri.getRawUserInfo() == null;
            if (!(scheme.equals("http") || scheme.equals("https")) || host.isEmpty() || !bare) {
                return Optional.empty();
            }
            return Optional.of(new PublicAddress(origin(scheme, host, uri.getPort())));
        } catch (URISyntaxException none) {
            return Optional.empty();
        }
    }

    /**
     * {@return an origin as browsers write it, without a port that goes without saying}
     *
     * @param scheme http or https
     * @param host a name or an address, an IPv6 one in brackets
     * @param port negative for the scheme's own
     */
    public static String origin(String scheme, String host, int port) {
        boolean usual = port < 0 || port == (scheme.equals("https") ? 443 : 80);
        return scheme + "://" + host + (usual ? "" : ":" + port);
    }
}
