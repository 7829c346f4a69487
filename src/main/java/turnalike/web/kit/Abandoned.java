package turnalike.web.kit;

import io.javalin.http.Context;

/** A request whose browser went away while its answer was waited for: there is nobody to tell anything, and nothing went wrong. */
public final class Abandoned {
    private Abandoned() {}

    /** {@return whether the server has taken the request's answer back already} */
    public static boolean is(Context ctx) {
        try {
            ctx.res().getStatus();
            return false;
        } catch (IllegalStateException takenBack) {
            return true;
        }
    }
}
