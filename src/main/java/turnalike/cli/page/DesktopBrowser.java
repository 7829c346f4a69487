package turnalike.cli.page;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The browser of the person at this machine, if there is a desktop to show it on. */
final class DesktopBrowser {
    private DesktopBrowser() {}

    /** Tries to show the address; the address is printed anyway, so nothing is said when it does not work. */
    static void open(String address) {
        command().ifPresent(command -> {
            try {
                new ProcessBuilder(List.of(command, address))
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
            } catch (IOException noSuchProgram) {
                return; // the printed address is enough
            }
        });
    }

    private static Optional<String> command() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.contains("mac")) {
            return Optional.of("open");
        }
        boolean desktop = System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null;
        return desktop ? Optional.of("xdg-open") : Optional.empty();
    }
}
