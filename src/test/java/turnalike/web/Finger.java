package turnalike.web;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;

/** One finger, as the browser is told of it by a touch screen. */
final class Finger {
    private static final int STEPS = 6;
    private static final int STEP_MS = 20;

    private final Page page;
    private final CDPSession screen;

    Finger(Page page) {
        this.page = page;
        this.screen = page.context().newCDPSession(page);
    }

    /** A telephone of 360 pixels, which has no mouse. */
    static Page telephone(Browser browser) {
        return browser.page(new NewContextOptions()
                .setViewportSize(360, 740)
                .setHasTouch(true)
                .setIsMobile(true)
                .setDeviceScaleFactor(2));
    }

    private void tell(String type, JsonArray points) {
        JsonObject told = new JsonObject();
        told.addProperty("type", type);
        told.add("touchPoints", points);
        screen.send("Input.dispatchTouchEvent", told);
    }

    private static JsonArray at(double x, double y) {
        JsonObject point = new JsonObject();
        point.addProperty("x", x);
        point.addProperty("y", y);
        JsonArray points = new JsonArray();
        points.add(point);
        return points;
    }

    void down(double x, double y) {
        tell("touchStart", at(x, y));
    }

    void move(double fromX, double fromY, double x, double y) {
        for (int i = 1; i <= STEPS; i++) {
            tell("touchMove", at(fromX + (x - fromX) * i / STEPS, fromY + (y - fromY) * i / STEPS));
            page.waitForTimeout(STEP_MS);
        }
    }

    void up() {
        tell("touchEnd", new JsonArray());
    }
}
