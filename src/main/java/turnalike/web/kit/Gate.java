package turnalike.web.kit;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What every request passes. A page elsewhere on the web may make this browser send requests here, so: the {@code Host} must be one of
 * ours (or a name was rebound to this machine), what changes anything must come from a page of ours ({@code Origin}) and carry the token
 * that only our pages can read, and no page of ours runs or loads anything but its own files.
 */
public final class Gate {
    /** The field or header that carries the token. */
    public static final String TOKEN = "token";

    /** The header scripts send the token in. */
    public static final String TOKEN_HEADER = "X-Turnalike-Token";

    private static final String COOKIE = "turnalike-token";
    private static final Set<String> HARMLESS = Set.of("GET", "HEAD");
    private static final Set<String> KNOWN = Set.of("GET", "HEAD", "POST");
    private static final Set<String> KNOWN_TO_PROGRAMS = Set.of("GET", "HEAD", "POST", "PUT", "PATCH", "DELETE");
    private static final Set<String> OUR_OWN = Set.of("same-origin", "none");
    private static final SecureRandom DICE = new SecureRandom();

    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:;"
                    + " font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none';"
                    + " frame-ancestors 'none'";

    private static final String HTTPS = "https://";
    private static final String ENCRYPTED = "turnalike-encrypted";

    private final Supplier<Set<String>> origins;

    /**
     * @param origins every address that is ours, as a browser writes it; asked at each request, since the port is known only once it is open
     */
    public Gate(Supplier<Set<String>> origins) {
        this.origins = origins;
    }

    /** Lets the request on to who may ask, and to {@link #token} after that, or throws the {@link Refusal}. Reads nothing but its head. */
    public void check(Context ctx) {
        headers(ctx);
        String host = Optional.ofNullable(ctx.header("Host")).orElse("").toLowerCase(Locale.ROOT);
        Optional<String> asked = asked(ctx, host);
        if (asked.isEmpty()) {
            throw Refusal.of(
                    421,
                    "address",
                    "this machine is not asked for by that name",
                    "open the address the program printed; a server before it must pass on the Host that it was asked by");
        }
        ctx.attribute(ENCRYPTED, asked.get().startsWith(HTTPS));
        String method = ctx.method().name();
        boolean program = ForPrograms.asks(ctx);
        if (!(program ? KNOWN_TO_PROGRAMS : KNOWN).contains(method)) {
            throw Refusal.of(405, "address", "nothing here is done that way", "use the page");
        }
        if (program) {
            noOtherPage(ctx, asked.get());
        } else if (!HARMLESS.contains(method)) {
            origin(ctx, asked.get());
        }
    }

    /**
     * A program is no browser and sends no {@code Origin}; a browser says for whom it asks, and does so of its own. So another page's request
     * is told apart without a token; one of ours may ask too, and carries it as its forms do. (The Fetch standard's headers, from memory.)
     */
    private static void noOtherPage(Context ctx, String asked) {
        boolean origin = Optional.ofNullable(ctx.header("Origin"))
                .filter(each -> !each.equals(asked))
                .isPresent();
        boolean site = Optional.ofNullable(ctx.header("Sec-Fetch-Site"))
                .filter(each -> !OUR_OWN.contains(each))
                .isPresent();
        if (origin || site) {
            throw Refusal.of(403, "address", "another page asked for that", "ask from a program, or from our own page");
        }
    }

    /** Lets a request that changes something in, when its form can be read and carries the token, or throws the {@link Refusal}. */
    public void token(Context ctx) {
        boolean forPrograms = ForPrograms.asks(ctx);
        if (HARMLESS.contains(ctx.method().name()) || (forPrograms && !isBrowser(ctx))) {
            return;
        }
        if (!forPrograms) {
            RequestInput.read(ctx);
        }
        String had = Optional.ofNullable(ctx.cookie(COOKIE)).orElse("");
        String sent = Optional.ofNullable(ctx.header(TOKEN_HEADER))
                .or(() -> forPrograms ? Optional.empty() : RequestInput.field(ctx, TOKEN))
                .orElse("");
        if (had.isEmpty() || !MessageDigest.isEqual(bytes(had), bytes(sent))) {
            throw Refusal.of(403, "page", "it was opened too long ago to change anything", "load the page again");
        }
    }

    /** Only a browser says for which page it asks. */
    private static boolean isBrowser(Context ctx) {
        return ctx.header("Origin") != null || ctx.header("Sec-Fetch-Site") != null;
    }

    private static void headers(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY)
                .header("X-Content-Type-Options", "nosniff")
                .header("X-Frame-Options", "DENY")
                .header("Referrer-Policy", "same-origin")
                .header("Cross-Origin-Opener-Policy", "same-origin")
                .header("Cross-Origin-Resource-Policy", "same-origin")
                .header("Permissions-Policy", "camera=(), microphone=(), geolocation=()")
                .header("Cache-Control", "no-store");
    }

    /** By which of our addresses it is asked. */
    private Optional<String> asked(Context ctx, String host) {
        Set<String> ours = origins.get();
        // A request that came encrypted was asked for so; one that did not, may have been as far as a server before us.
        return (ctx.scheme().equals("https") ? Stream.of(HTTPS) : Stream.of("http://", HTTPS))
                .filter(scheme ->
                        ours.contains(scheme + host) || ours.contains(scheme + "*" + host.replaceFirst("^[^.:]*", "")))
                .map(scheme -> scheme + host)
                .findFirst();
    }

    private static void origin(Context ctx, String asked) {
        String origin = Optional.ofNullable(ctx.header("Origin")).orElse("");
        if (!origin.equals(asked)) {
            throw Refusal.of(403, "address", "another page asked for that", "do it on the page itself");
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Whether the browser speaks to us, or to a server before us, encrypted: a cookie is then to go no other way. */
    public static boolean isEncrypted(Context ctx) {
        return Boolean.TRUE.equals(ctx.attribute(ENCRYPTED));
    }

    /** The token of whoever asks, for our forms; made on the first visit. */
    static String tokenFor(Context ctx) {
        String had = Optional.ofNullable(ctx.cookie(COOKIE)).orElse("");
        if (had.matches("[A-Za-z0-9_-]{22}")) {
            return had;
        }
        byte[] drawn = new byte[16];
        DICE.nextBytes(drawn);
        String made = Base64.getUrlEncoder().withoutPadding().encodeToString(drawn);
        Cookies.secret(ctx, COOKIE, made);
        return made;
    }
}
