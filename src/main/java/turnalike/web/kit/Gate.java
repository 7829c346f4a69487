package turnalike.web.kit;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

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
    private static final int A_YEAR_S = 365 * 24 * 3600;
    private static final SecureRandom DICE = new SecureRandom();

    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:;"
                    + " font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none';"
                    + " frame-ancestors 'none'";

    private final Supplier<Set<String>> hosts;

    /**
     * @param hosts every {@code Host} that is ours, with its port; asked at each request, since the port is known only once it is open
     */
    public Gate(Supplier<Set<String>> hosts) {
        this.hosts = hosts;
    }

    /** Lets the request on to who may ask, and to {@link #token} after that, or throws the {@link Refusal}. Reads nothing but its head. */
    public void check(Context ctx) {
        headers(ctx);
        String host = Optional.ofNullable(ctx.header("Host")).orElse("");
        if (!hosts.get().contains(host)) {
            throw Refusal.of(
                    421,
                    "address",
                    "this machine is not asked for by that name",
                    "open the address the program printed");
        }
        String method = ctx.method().name();
        boolean program = ForPrograms.asks(ctx);
        if (!(program ? KNOWN_TO_PROGRAMS : KNOWN).contains(method)) {
            throw Refusal.of(405, "address", "nothing here is done that way", "use the page");
        }
        if (program) {
            noOtherPage(ctx, host);
        } else if (!HARMLESS.contains(method)) {
            origin(ctx, host);
        }
    }

    /**
     * A program is no browser and sends no {@code Origin}; a browser says for whom it asks, and does so of its own. So another page's request
     * is told apart without a token, and one of ours may ask too. (The Fetch standard's headers, from memory.)
     */
    private static void noOtherPage(Context ctx, String host) {
        boolean origin = Optional.ofNullable(ctx.header("Origin"))
                .filter(each -> !each.equals("http://" + host))
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
        if (HARMLESS.contains(ctx.method().name()) || ForPrograms.asks(ctx)) {
            return;
        }
        RequestInput.read(ctx);
        String had = Optional.ofNullable(ctx.cookie(COOKIE)).orElse("");
        String sent = Optional.ofNullable(ctx.header(TOKEN_HEADER))
                .or(() -> RequestInput.field(ctx, TOKEN))
                .orElse("");
        if (had.isEmpty() || !MessageDigest.isEqual(bytes(had), bytes(sent))) {
            throw Refusal.of(403, "page", "it was opened too long ago to change anything", "load the page again");
        }
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

    private static void origin(Context ctx, String host) {
        String origin = Optional.ofNullable(ctx.header("Origin")).orElse("");
        if (!origin.equals("http://" + host)) {
            throw Refusal.of(403, "address", "another page asked for that", "do it on the page itself");
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
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
        ctx.cookie(new Cookie(COOKIE, made, "/", A_YEAR_S, false, true, null, SameSite.STRICT));
        return made;
    }
}
