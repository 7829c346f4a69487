package turnalike.web.lan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import turnalike.web.kit.Cookies;
import turnalike.web.kit.Feature;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** Pairing a device, and on the host the list of devices. */
public final class LanFeature implements Feature {

    private final Sharing sharing;
    private final Pages pages;
    private final Supplier<List<String>> addresses;

    /** @param addresses where other devices find the page; asked when shown, since the port is known only once it is open */
    public LanFeature(Sharing sharing, Pages pages, Supplier<List<String>> addresses) {
        this.sharing = sharing;
        this.pages = pages;
        this.addresses = addresses;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/pair", ctx -> showPairing(ctx, 200, ""));
        routes.post("/pair", this::pair);
        routes.get("/devices", this::devices);
        routes.post("/devices/token", this::token);
        routes.post("/devices/{device}/revoke", this::revoke);
        routes.post("/devices/{device}/role", this::allow);
        routes.post("/devices/next", this::next);
    }

    private void showPairing(Context ctx, int status, String problem) {
        pages.show(ctx, status, "lan/pair.jte", "Pair this device", new PairView(problem));
    }

    private void pair(Context ctx) {
        String name = RequestInput.field(ctx, "name").orElse("").strip();
        if (!Device.isName(name)) {
            showPairing(ctx, 422, "Give the device a name of 1 to 40 letters.");
            return;
        }
        switch (sharing.code()
                .with(sharing.caller(ctx), RequestInput.field(ctx, "code").orElse(""))) {
            case PAIRED -> {
                String token = sharing.devices().pair(name, sharing.devices().next());
                Cookies.secret(ctx, Sharing.COOKIE, token);
                ctx.redirect("/", HttpStatus.SEE_OTHER);
            }
            case WRONG ->
                showPairing(
                        ctx,
                        422,
                        "That is not the code the host shows now. After five wrong tries this device must wait ten minutes.");
            case TOO_SOON -> showPairing(ctx, 429, "Wait a second between tries.");
            case TOO_MANY -> showPairing(ctx, 429, "Five codes were wrong: wait ten minutes before the next.");
        }
    }

    private void hostOnly(Context ctx) {
        if (!sharing.isHost(ctx)) {
            throw Refusal.of(
                    403, "devices", "are minded on the host only", "open this page on the machine that serves");
        }
    }

    private void devices(Context ctx) {
        hostOnly(ctx);
        showDevices(ctx, Optional.empty());
    }

    /** A token for a program, shown this once: the file of devices holds only its digest. */
    private void token(Context ctx) {
        hostOnly(ctx);
        String name = Sharing.named(RequestInput.field(ctx, "name").orElse(""));
        showDevices(
                ctx, Optional.of(sharing.devices().pair(name, sharing.devices().next())));
    }

    private void showDevices(Context ctx, Optional<String> token) {
        pages.show(
                ctx,
                200,
                "lan/devices.jte",
                "Devices",
                new DevicesView(
                        sharing.devices().list(),
                        sharing.code().now(),
                        addresses.get(),
                        sharing.devices().next(),
                        token));
    }

    private static DeviceRole role(Context ctx) {
        return RequestInput.field(ctx, "role")
                .flatMap(DeviceRole::find)
                .orElseThrow(() -> Refusal.of(422, "role", "is none we know", "choose one of the two"));
    }

    private void next(Context ctx) {
        hostOnly(ctx);
        sharing.devices().next(role(ctx));
        ctx.redirect("/devices", HttpStatus.SEE_OTHER);
    }

    private void allow(Context ctx) {
        hostOnly(ctx);
        if (!sharing.devices().allow(ctx.pathParam("device"), role(ctx))) {
            throw Refusal.notFound("that device");
        }
        ctx.redirect("/devices", HttpStatus.SEE_OTHER);
    }

    private void revoke(Context ctx) {
        hostOnly(ctx);
        if (!sharing.devices().revoke(ctx.pathParam("device"))) {
            throw Refusal.notFound("that device");
        }
        ctx.redirect("/devices", HttpStatus.SEE_OTHER);
    }
}
