package turnalike.web.kit;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;

/** What a browser is given to keep: for the whole site, out of the reach of scripts, and sent with no request that another site makes. */
public final class Cookies {
    private static final int A_YEAR_S = 366 * 24 * 3600;

    private Cookies() {}

    /** Gives a choice to keep for a year; it may be read on the way. */
    public static void choice(Context ctx, String name, String value) {
        give(ctx, name, value, false);
    }

    /** Gives a secret to keep for a year; where the browser speaks encrypted, it goes no other way. */
    public static void secret(Context ctx, String name, String value) {
        give(ctx, name, value, Gate.isEncrypted(ctx));
    }

    private static void give(Context ctx, String name, String value, boolean encryptedOnly) {
        ctx.cookie(new Cookie(name, value, "/", A_YEAR_S, encryptedOnly, true, null, SameSite.STRICT));
    }
}
