package turnalike.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What programs compiled against the library lean on, line by line as it was kept: a line gone or changed breaks them, a new one does not. Renewed
 * with {@code -Dturnalike.renew=true}, which refuses to drop a line while the version stays.
 */
class PublicFaceTest {
    private static final Path KEPT = Path.of("docs/library-api.txt");
    private static final Path SOURCES = Path.of("src/main/java/turnalike/api");
    private static final Pattern NAME = Pattern.compile("turnalike\\.[\\w.$]+");

    @Test
    void the_public_face_is_what_was_kept() throws IOException {
        List<String> now = listing();
        if (Boolean.getBoolean("turnalike.renew")) {
            renew(now);
        }
        List<String> kept = Files.readAllLines(KEPT);
        assertThat(now)
                .as("renew %s; a line gone asks for a new version first, see docs/library.md", KEPT)
                .containsExactlyElementsOf(kept.subList(1, kept.size()));
    }

    @Test
    void it_stays_small_and_names_no_type_of_another_package_than_units() throws IOException {
        Set<String> packages = listing().stream()
                .flatMap(line -> NAME.matcher(line).results().map(found -> found.group()))
                .map(name -> name.substring(0, name.lastIndexOf('.')))
                .filter(name -> !name.matches(".*[A-Z].*"))
                .collect(Collectors.toSet());
        assertThat(packages).containsExactlyInAnyOrder("turnalike.api", "turnalike.units");
    }

    /** Lines that are gone ask for a version whose first number differs, or before 1.0 its second. */
    private static void renew(List<String> now) throws IOException {
        String version = version();
        if (Files.exists(KEPT)) {
            List<String> kept = new ArrayList<>(Files.readAllLines(KEPT));
            String before = kept.remove(0);
            kept.removeAll(now);
            if (before.equals("# " + series(version))) {
                assertThat(kept)
                        .as("gone while the version stays %s", series(version))
                        .isEmpty();
            }
        }
        Files.writeString(KEPT, "# " + series(version) + "\n" + String.join("\n", now) + "\n");
    }

    private static String version() throws IOException {
        Matcher found = Pattern.compile("<version>(.*?)</version>").matcher(Files.readString(Path.of("pom.xml")));
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    /** Within a series nothing breaks: 0.1 of 0.1.3, 2 of 2.5.0. */
    private static String series(String version) {
        String[] parts = version.split("\\.", -1);
        return parts[0].equals("0") ? parts[0] + "." + parts[1] : parts[0];
    }

    private static List<String> listing() throws IOException {
        Set<Class<?>> types = new java.util.LinkedHashSet<>();
        try (Stream<Path> files = Files.list(SOURCES)) {
            files.map(file -> file.getFileName().toString().replace(".java", ""))
                    .filter(name -> !name.equals("package-info"))
                    .sorted()
                    .forEach(name -> add(types, "turnalike.api." + name));
        }
        TreeSet<String> out = new TreeSet<>();
        for (List<Class<?>> left = new ArrayList<>(types); !left.isEmpty(); ) {
            Class<?> type = left.remove(0);
            List<String> lines = lines(type);
            out.addAll(lines);
            for (String line : lines) {
                NAME.matcher(line).results().map(found -> found.group()).forEach(name -> {
                    if (add(types, name)) {
                        left.add(find(name));
                    }
                });
            }
        }
        return List.copyOf(out);
    }

    private static boolean add(Set<Class<?>> types, String name) {
        Class<?> type = find(name);
        return Modifier.isPublic(type.getModifiers()) && types.add(type);
    }

    /** The longest beginning of the name that is a type: the rest is a member of it. */
    private static Class<?> find(String name) {
        for (String each = name; each.contains("."); each = each.substring(0, each.lastIndexOf('.'))) {
            try {
                return Class.forName(each);
            } catch (ClassNotFoundException member) {
                // A member of the type that the rest of the name is.
            }
        }
        throw new AssertionError(name);
    }

    private static List<String> lines(Class<?> type) {
        List<String> out = new ArrayList<>(List.of(Modifier.toString(type.getModifiers()) + " " + type.getName()));
        for (Constructor<?> each : type.getDeclaredConstructors()) {
            if (Modifier.isPublic(each.getModifiers())) {
                out.add("%s(%s)".formatted(type.getName(), names(each.getGenericParameterTypes())));
            }
        }
        for (Field each : type.getDeclaredFields()) {
            if (Modifier.isPublic(each.getModifiers())) {
                out.add("%s.%s: %s"
                        .formatted(
                                type.getName(),
                                each.getName(),
                                each.getGenericType().getTypeName()));
            }
        }
        for (Method each : type.getDeclaredMethods()) {
            if (Modifier.isPublic(each.getModifiers()) && !each.isSynthetic()) {
                out.add("%s.%s(%s): %s%s"
                        .formatted(
                                type.getName(),
                                each.getName(),
                                names(each.getGenericParameterTypes()),
                                each.getGenericReturnType().getTypeName(),
                                Modifier.isStatic(each.getModifiers()) ? " static" : ""));
            }
        }
        return out;
    }

    private static String names(Type... types) {
        return Arrays.stream(types).map(Type::getTypeName).collect(Collectors.joining(", "));
    }
}
