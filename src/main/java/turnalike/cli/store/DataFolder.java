package turnalike.cli.store;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The folder in which each system keeps what belongs to one user's programs. */
public final class DataFolder {
    private DataFolder() {}

    /**
     * The program's folder there; it may not exist yet.
     *
     * @param system the system's name, as Java has it
     */
    public static Path of(String system, Path home, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        Path data;
        if (name.contains("windows")) {
            data = given(environment, "LOCALAPPDATA").orElse(home.resolve("AppData/Local"));
        } else if (name.contains("mac")) {
            data = home.resolve("Library/Application Support");
        } else {
            // XDG Base Directory Specification 0.8: XDG_DATA_HOME, or .local/share where it is not set or not absolute
            // (from memory).
            data = given(environment, "XDG_DATA_HOME").filter(Path::isAbsolute).orElse(home.resolve(".local/share"));
        }
        return data.resolve("turnalike");
    }

    private static Optional<Path> given(Map<String, String> environment, String name) {
        return Optional.ofNullable(environment.get(name))
                .filter(text -> !text.isBlank())
                .map(Path::of);
    }
}
