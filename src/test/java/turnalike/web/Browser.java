package turnalike.web;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;

/** Debian's Chromium, without a window. Whatever a page complains of, or asks another machine for, is gathered in {@link #complaints}. */
public final class Browser implements AutoCloseable {
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");

    private final Playwright playwright;
    private final com.microsoft.playwright.Browser browser;
    private final List<String> complaints = new CopyOnWriteArrayList<>();

    private Browser(Playwright playwright, List<String> more) {
        this.playwright = playwright;
        this.browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(CHROMIUM)
                        .setArgs(Stream.concat(
                                        more.stream(),
                                        Stream.of(
                                                "--no-sandbox",
                                                "--disable-gpu",
                                                "--disable-quic",
                                                "--no-first-run",
                                                "--disable-background-networking",
                                                "--disable-component-update",
                                                "--disable-sync"))
                                .toList()));
    }

    public static Browser open() {
        return open(List.of());
    }

    /** The same with more of Chromium's own options. */
    public static Browser open(List<String> more) {
        if (!Files.isExecutable(CHROMIUM)) {
            throw new IllegalStateException("no " + CHROMIUM + "; on Debian: apt-get install chromium");
        }
        Map<String, String> environment = Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
        return new Browser(Playwright.create(new Playwright.CreateOptions().setEnv(environment)), more);
    }

    /** A page with cookies of its own, as another person's browser has. */
    public Page page(int width, int height) {
        return page(new NewContextOptions().setViewportSize(width, height));
    }

    public Page page(NewContextOptions options) {
        BrowserContext context = browser.newContext(options);
        Page page = context.newPage();
        page.onConsoleMessage(message -> {
            // An edit that is refused is answered with 422, which Chromium reports as an error of its own.
            if (message.type().equals("error") && !message.text().contains("status of 422")) {
                complaints.add(message.text());
            }
        });
        page.onPageError(complaints::add);
        page.onRequest(request -> {
            if (!request.url().matches("(http://localhost:|data:|blob:).*")) {
                complaints.add("asked for " + request.url());
            }
        });
        return page;
    }

    public List<String> complaints() {
        return complaints;
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
