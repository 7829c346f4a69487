package turnalike.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import turnalike.Main;

/**
 * Which package stands on which level. A folder right under {@code turnalike} is a feature, a folder in it one of its rooms; a feature uses
 * only features of a lower level, a room only rooms of a lower level of its own feature. The empty name is the folder itself.
 */
final class Levels {
    /** {@code sheets} uses {@code drawing}, the one pair on one level. */
    static final Map<String, Integer> FEATURES = new TreeMap<>(Map.ofEntries(
            Map.entry("units", 0),
            Map.entry("effort", 0),
            Map.entry("language", 0),
            Map.entry("csv", 1),
            Map.entry("outline", 1),
            Map.entry("wood", 1),
            Map.entry("pattern", 2),
            Map.entry("solid", 2),
            Map.entry("stock", 3),
            Map.entry("settings", 3),
            Map.entry("pieces", 3),
            Map.entry("frame", 3),
            Map.entry("trace", 3),
            Map.entry("year", 3),
            Map.entry("price", 3),
            Map.entry("turning", 4),
            Map.entry("match", 4),
            Map.entry("photo", 4),
            Map.entry("job", 5),
            Map.entry("drawing", 6),
            Map.entry("sheets", 6),
            Map.entry("store", 6),
            Map.entry("release", 6),
            Map.entry("reach", 6),
            Map.entry("workbook", 6),
            Map.entry("api", 7),
            Map.entry("web", 7),
            Map.entry("cli", 7),
            Map.entry("", 8)));

    /** Each from its lowest level up; a feature that is not named has no rooms. */
    private static final Map<String, List<Set<String>>> ROOMS = Map.of(
            "stock",
            List.of(Set.of("boards"), Set.of("")),
            "pieces",
            List.of(Set.of(""), Set.of("control", "mend", "blanks")),
            "trace",
            List.of(Set.of(""), Set.of("table", "drawn", "fit", "against")),
            "job",
            List.of(
                    Set.of("fields"),
                    Set.of("wood"),
                    Set.of("set"),
                    Set.of(""),
                    Set.of("keys", "pieces", "boards", "price", "original"),
                    Set.of("read"),
                    Set.of("kept"),
                    Set.of("edit", "answer"),
                    Set.of("nudge")),
            "drawing",
            List.of(
                    Set.of("svg"),
                    Set.of("piece", "chart", "dxf", "board", "model"),
                    Set.of("gauge", "frame"),
                    Set.of("")),
            "cli",
            List.of(
                    Set.of("kit"),
                    Set.of("store"),
                    Set.of("plan", "pieces", "match", "boards", "price"),
                    Set.of("demo", "page", "trace", "about"),
                    Set.of("")),
            "web",
            List.of(
                    Set.of("kit"),
                    Set.of("jobs", "job", "pieces", "match", "lan", "help", "copy", "news"),
                    Set.of("turning", "sheets", "bench", "wood", "api"),
                    Set.of("")));

    private Levels() {}

    /** The program's own classes, wherever they were compiled to: none of the tests' and none made from the templates. */
    static JavaClasses classes() {
        return Imported.CLASSES;
    }

    /** Read once for all tests: some 1,500 class files. */
    private static final class Imported {
        private static final JavaClasses CLASSES = new ClassFileImporter()
                .withImportOption(location -> location.contains("/turnalike/"))
                .importUrl(Main.class.getProtectionDomain().getCodeSource().getLocation());
    }

    static boolean isOurs(JavaClass type) {
        return type.getPackageName().equals("turnalike")
                || type.getPackageName().startsWith("turnalike.");
    }

    static DescribedPredicate<JavaClass> ours() {
        return DescribedPredicate.describe("are ours", Levels::isOurs);
    }

    static String feature(JavaClass type) {
        String path = path(type);
        return path.contains(".") ? path.substring(0, path.indexOf('.')) : path;
    }

    static String room(JavaClass type) {
        String path = path(type);
        return path.contains(".") ? path.substring(path.indexOf('.') + 1) : "";
    }

    private static String path(JavaClass type) {
        return type.getPackageName().equals("turnalike")
                ? ""
                : type.getPackageName().substring("turnalike.".length());
    }

    /** The rooms each feature really has. */
    static Map<String, Set<String>> roomsOf(JavaClasses classes) {
        Map<String, Set<String>> rooms = new TreeMap<>();
        classes.forEach(type ->
                rooms.computeIfAbsent(feature(type), feature -> new TreeSet<>()).add(room(type)));
        return rooms;
    }

    /** A feature that is in no row stands above all: it may use nothing wrongly and nothing may use it. */
    static int level(String feature) {
        return FEATURES.getOrDefault(feature, Integer.MAX_VALUE);
    }

    static List<Set<String>> rooms(String feature) {
        return ROOMS.getOrDefault(feature, List.of(Set.of("")));
    }

    static boolean mayUse(String from, String to) {
        boolean sheetsDraw = from.equals("sheets") && to.equals("drawing");
        return from.equals(to) || sheetsDraw || level(from) > level(to);
    }

    /** Likewise for two rooms of one feature. */
    static boolean roomMayUse(String feature, String from, String to) {
        return from.equals(to) || roomLevel(feature, from) > roomLevel(feature, to);
    }

    private static int roomLevel(String feature, String room) {
        List<Set<String>> rooms = rooms(feature);
        for (int level = 0; level < rooms.size(); level++) {
            if (rooms.get(level).contains(room)) {
                return level;
            }
        }
        return Integer.MAX_VALUE;
    }
}
