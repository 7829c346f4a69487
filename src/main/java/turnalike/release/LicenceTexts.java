package turnalike.release;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * The licences in full. What a library carries in its own file comes from there, to the letter; where it carries none, the licence's
 * standard text does, which is packed with the program.
 */
public final class LicenceTexts {
    /** The file's own licence and notices, and those of what it has taken in itself. */
    private static final Pattern CARRIED = Pattern.compile(
            "META-INF/(?:maven/.*/|resources/webjars/.*/)?(?:[A-Za-z]+-)*(?:LICENSE|NOTICE)(?:\\.[a-z]+)?");

    /** Licences whose standard text is packed with the program. */
    static final Set<String> STANDARD = Set.of("Apache-2.0", "BSD-3-Clause", "EPL-2.0");

    private LicenceTexts() {}

    /**
     * One text.
     *
     * @param name of the file it stands in, in its library, or of the licence
     * @param text of it
     */
    public record Text(String name, String text) {}

    /**
     * {@return every text that goes with the library; never none}
     *
     * @param library one that the program ships with
     */
    public static List<Text> of(Library library) {
        List<Text> out =
                new ArrayList<>(file(library).map(LicenceTexts::carried).orElse(List.of()));
        if (out.stream().noneMatch(each -> each.name().contains("LICENSE"))) {
            Stream.of(library.licence().split(" OR ", -1))
                    .filter(STANDARD::contains)
                    .map(LicenceTexts::standard)
                    .forEach(out::add);
        }
        return List.copyOf(out);
    }

    private static Text standard(String licence) {
        return new Text(licence, Packed.text("/turnalike/release/licences/%s.txt".formatted(licence)));
    }

    /** Where Java loads it from. */
    private static Optional<Path> file(Library library) {
        return Stream.of(System.getProperty("java.class.path", "").split(File.pathSeparator, -1))
                .filter(each -> !each.isEmpty())
                .map(Path::of)
                .filter(each -> each.endsWith(library.file()) && Files.isRegularFile(each))
                .findFirst();
    }

    private static List<Text> carried(Path jar) {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            List<Text> out = new ArrayList<>();
            for (ZipEntry each : zip.stream()
                    .filter(entry -> CARRIED.matcher(entry.getName()).matches())
                    .toList()) {
                String text = new String(zip.getInputStream(each).readAllBytes(), StandardCharsets.UTF_8);
                out.add(new Text(each.getName().substring(each.getName().lastIndexOf('/') + 1), text));
            }
            return out;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
