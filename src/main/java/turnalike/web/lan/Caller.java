package turnalike.web.lan;

import io.javalin.http.Context;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Who asks.
 *
 * @param from the address that the connection comes from
 * @param head what the request says of itself
 * @param protocol the version it speaks: {@code HTTP/1.1}
 */
record Caller(InetAddress from, Head head, String protocol) {
    /** What servers add to what they pass on; the first three in common use, Forwarded by RFC 7239, Via by RFC 9110 (from memory). */
    private static final List<String> PASSED_ON =
            List.of("X-Forwarded-For", "X-Forwarded-Host", "X-Real-IP", "Forwarded", "Via");

    private static final Pattern THIS_MACHINE = Pattern.compile("(localhost|\\[::1\\])(:\\d+)?");
    private static final Pattern ADDRESS = Pattern.compile("[0-9.]{7,15}|[0-9a-fA-F:.]{2,45}");

    /** The fields of a request's head. */
    interface Head {
        /** The field of that name, the last where there are several. */
        Optional<String> field(String name);
    }

    static Caller of(Context ctx) {
        return new Caller(address(ctx.ip()), name -> last(ctx, name), ctx.protocol());
    }

    private static Optional<String> last(Context ctx, String name) {
        return Collections.list(ctx.req().getHeaders(name)).stream().reduce((first, second) -> second);
    }

    /** Whether a server on the same machine may have passed it on for another: only what is plainly this machine's own browser has not. */
    boolean passedOn() {
        String host = head.field("Host").orElse("").toLowerCase(Locale.ROOT);
        return protocol.equals("HTTP/1.0")
                || !THIS_MACHINE.matcher(host).matches()
                || PASSED_ON.stream().anyMatch(each -> head.field(each).isPresent());
    }

    /** The address for which the server before us asks: the last it names, since what stands before that the asker may have written himself. */
    InetAddress behind() {
        String[] named = head.field("X-Forwarded-For").orElse("").split(",", -1);
        String last = named[named.length - 1].strip();
        try {
            return ADDRESS.matcher(last).matches() ? InetAddress.getByName(last) : from;
        } catch (UnknownHostException none) {
            return from;
        }
    }

    private static InetAddress address(String text) {
        try {
            return InetAddress.getByName(text);
        } catch (UnknownHostException strange) {
            throw new IllegalStateException("the server gave '%s' for an address".formatted(text), strange);
        }
    }
}
