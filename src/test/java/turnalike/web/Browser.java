package turnalike.web;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;

/**
 * Debian's Chromium, without a window. Whatever a page complains of, or asks another machine for, is gathered in {@link #complaints}.
 *
 * <p>Most tests share one that has nothing but what draws and runs pages, the same as in the whole one, which works up to twice as much for
 * them: each test has pages with cookies, shelves and complaints of its own. The whole one, as users have it, is for the tests that ask for
 * it.
 */
public final class Browser implements AutoCloseable {
    private static final String PAGES_ALONE = "chromium-headless-shell";
    private static final String WHOLE = "chromium";
    private static final int PATIENCE_MS = 30_000;

    private final Chromium chromium;
    private final boolean shared;
    private final List<BrowserContext> contexts = new ArrayList<>();
    private final List<String> complaints = new CopyOnWriteArrayList<>();

    private Browser(Chromium chromium, boolean shared) {
        this.chromium = chromium;
        this.shared = shared;
    }

    /** The program, and what speaks with it. */
    private record Chromium(Playwright playwright, com.microsoft.playwright.Browser browser) {
        static Chromium start(String name, List<String> more) {
            // A first answer takes longer than Playwright's 5 s where everything else is busy; only what fails waits so
            // long.
            PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
            Path program = Path.of("/usr/bin", name);
            if (!Files.isExecutable(program)) {
                throw new IllegalStateException("no %s; on Debian: apt-get install %s".formatted(program, name));
            }
            Map<String, String> environment = Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
            Playwright playwright = Playwright.create(new Playwright.CreateOptions().setEnv(environment));
            List<String> options = Stream.concat(
                            more.stream(),
                            Stream.of(
                                    "--no-sandbox",
                                    "--disable-gpu",
                                    "--disable-quic",
                                    "--no-first-run",
                                    "--disable-background-networking",
                                    "--disable-component-update",
                                    "--disable-sync"))
                    .toList();
            return new Chromium(
                    playwright,
                    playwright
                            .chromium()
                            .launch(new BrowserType.LaunchOptions()
                                    .setExecutablePath(program)
                                    .setArgs(options)));
        }

        void end() {
            browser.close();
            playwright.close();
        }
    }

    /** Started by the first test that asks for it, ended with the process. */
    private static final class Shared {
        private static final Chromium CHROMIUM = Chromium.start(PAGES_ALONE, List.of());

        static {
            Runtime.getRuntime().addShutdownHook(new Thread(CHROMIUM::end));
        }
    }

    public static Browser open() {
        return new Browser(Shared.CHROMIUM, true);
    }

    /** As {@link #open}, but ended when it is closed: a program beside the tests ends only then. */
    public static Browser alone() {
        return new Browser(Chromium.start(PAGES_ALONE, List.of()), false);
    }

    /** The whole Chromium, with more of its own options. */
    public static Browser whole(String... more) {
        return new Browser(Chromium.start(WHOLE, List.of(more)), false);
    }

    /** A page with cookies of its own, as another person's browser has. */
    public Page page(int width, int height) {
        return page(new NewContextOptions().setViewportSize(width, height));
    }

    public Page page(NewContextOptions options) {
        BrowserContext context = chromium.browser().newContext(options);
        contexts.add(context);
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
        if (shared) {
            contexts.forEach(BrowserContext::close);
        } else {
            chromium.end();
        }
    }
}
