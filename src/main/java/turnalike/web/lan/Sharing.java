package turnalike.web.lan;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.net.InetAddress;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import turnalike.units.Problem;
import turnalike.web.kit.Asker;
import turnalike.web.kit.ForPrograms;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;

/**
 * Who may use the page when it is shared: this machine always, another device once it is paired. It stands behind the {@link
 * turnalike.web.kit.Gate}, which every request passes first.
 */
public final class Sharing {
    /** Carries the secret of a paired device. */
    public static final String COOKIE = "turnalike-device";

    /** What a device that is not paired yet may see: the pairing itself. */
    private static final Set<String> OPEN = Set.of("/pair", ForPrograms.PATH + "/pair");

    private static final String ASSETS = "/assets/";

    private static final long LONGEST_PAIRING = 1_000;

    static final Problem NOT_PAIRED = new Problem(
            "this device",
            "is not paired with the program",
            "open the first page here and type the code that the host shows");

    private final Devices devices;
    private final PairingCode code;
    private final Predicate<InetAddress> host;
    private final boolean behind;

    private Sharing(Devices devices, PairingCode code, Predicate<InetAddress> host, boolean behind) {
        this.devices = devices;
        this.code = code;
        this.host = host;
        this.behind = behind;
    }

    /** The same where another server on this machine passes requests on: what it passes on does not come from this machine. */
    public Sharing behindProxy() {
        return new Sharing(devices, code, host, true);
    }

    /**
     * Sharing with the devices of a file.
     *
     * @param shown told of every pairing code, to show it on the host
     */
    public static Sharing of(Path file, Clock clock, Consumer<String> shown) {
        return of(file, clock, shown, InetAddress::isLoopbackAddress);
    }

    /** The same, with another notion of which address is this machine's: a test has no second machine. */
    static Sharing of(Path file, Clock clock, Consumer<String> shown, Predicate<InetAddress> host) {
        return new Sharing(new Devices(file, clock), new PairingCode(clock, shown), host, false);
    }

    Devices devices() {
        return devices;
    }

    PairingCode code() {
        return code;
    }

    /** Lets the request on, sends a browser that is not paired yet to the pairing, or throws the {@link Refusal}. */
    public void check(Context ctx) {
        Optional<Device> known = device(ctx);
        if (token(ctx).isPresent() && known.isEmpty()) {
            throw Refusal.of(
                    401, "token", "is not known here, or was taken back", "make another on the page of devices");
        }
        boolean open = OPEN.contains(ctx.path()) || ctx.path().startsWith(ASSETS);
        boolean here = isHost(ctx);
        Optional<Device> device = known.filter(each -> !here);
        Asker.is(device.map(Device::name));
        device.ifPresent(each -> require(each, ctx));
        if (here || open || device.isPresent()) {
            return;
        }
        if (ForPrograms.asks(ctx)) {
            throw Refusal.of(
                    401,
                    "token",
                    "is missing",
                    "send Authorization: Bearer and the token that pairing or the host gave");
        }
        if (ctx.method().equals(HandlerType.GET) && !Pages.isPart(ctx)) {
            ctx.redirect("/pair", HttpStatus.SEE_OTHER);
            ctx.skipRemainingHandlers();
        } else {
            throw new Refusal(401, List.of(NOT_PAIRED));
        }
    }

    private static void require(Device device, Context ctx) {
        if (!ctx.method().equals(HandlerType.GET) && !device.role().maySend(ctx.path())) {
            throw Refusal.of(
                    403,
                    device.name(),
                    "may only log and turn; nothing was changed",
                    "do it on another device, or have the host let this one change patterns");
        }
    }

    /** The paired device that asks. */
    Optional<Device> device(Context ctx) {
        return token(ctx).or(() -> Optional.ofNullable(ctx.cookie(COOKIE))).flatMap(devices::find);
    }

    /** The token that a program sends. */
    private static Optional<String> token(Context ctx) {
        return ForPrograms.asks(ctx)
                ? ForPrograms.token(Optional.ofNullable(ctx.header("Authorization")))
                : Optional.empty();
    }

    /**
     * Pairs a program and returns its token, or throws the {@link Refusal}.
     *
     * @param name what its owner calls it
     * @param typed the code that the host shows
     */
    public String pairProgram(Context ctx, String name, String typed) {
        String plain = named(name);
        return switch (code.with(caller(ctx), typed)) {
            case PAIRED -> devices.pair(plain, devices.next());
            case WRONG ->
                throw Refusal.of(
                        422, "code", "is not the one the host shows now", "after five wrong tries wait ten minutes");
            case TOO_SOON -> throw Refusal.of(429, "code", "was tried a moment ago", "wait a second between tries");
            case TOO_MANY -> throw Refusal.of(429, "code", "was wrong five times", "wait ten minutes before the next");
        };
    }

    /** A device's name without blanks around it; one that is none is refused. */
    static String named(String typed) {
        String name = typed.strip();
        if (!Device.isName(name)) {
            throw Refusal.of(422, "name", "is no device's name", "give one of 1 to 40 letters");
        }
        return name;
    }

    /** Whether the machine that serves is the one that asks. */
    boolean isHost(Context ctx) {
        return isHost(Caller.of(ctx));
    }

    private boolean isHost(Caller caller) {
        return host.test(caller.from()) && !(behind && caller.passedOn());
    }

    /** The address that asks, or for which a server before us does. */
    InetAddress caller(Context ctx) {
        Caller caller = Caller.of(ctx);
        return behind && caller.passedOn() ? caller.behind() : caller.from();
    }

    /**
     * Whether a request with a body may be read at all. Who is neither the host nor paired may only send the few letters of the pairing: what
     * else he sends is not waited for.
     *
     * @param caller who sends it
     * @param secret what it carries of a device that was paired
     * @param path where it goes
     * @param length what it says of its length, negative when it does not
     */
    boolean admitsBody(Caller caller, Optional<String> secret, String path, long length) {
        return isHost(caller)
                || secret.flatMap(devices::find).isPresent()
                || (OPEN.contains(path) && length >= 0 && length <= LONGEST_PAIRING);
    }
}
