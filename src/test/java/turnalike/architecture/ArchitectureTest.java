package turnalike.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.InputStream;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import turnalike.Main;
import turnalike.outline.PlantedViolation;

/** Holds the arrows between the packages: a folder is a feature, and features stand on levels. */
class ArchitectureTest {
    /** The program's own classes, wherever they were compiled to: none of the tests' and none made from the templates. */
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(location -> location.contains("/turnalike/"))
            .importUrl(Main.class.getProtectionDomain().getCodeSource().getLocation());

    /** A package uses only packages of a lower level. {@code sheets} uses {@code drawing}, the one pair on one level. */
    private static final Map<String, Integer> LEVELS = new TreeMap<>(Map.ofEntries(
            Map.entry("units", 0),
            Map.entry("effort", 0),
            Map.entry("outline", 1),
            Map.entry("wood", 1),
            Map.entry("pattern", 2),
            Map.entry("solid", 2),
            Map.entry("stock", 3),
            Map.entry("settings", 3),
            Map.entry("pieces", 3),
            Map.entry("frame", 3),
            Map.entry("turning", 4),
            Map.entry("match", 4),
            Map.entry("photo", 4),
            Map.entry("job", 5),
            Map.entry("drawing", 6),
            Map.entry("sheets", 6),
            Map.entry("store", 6),
            Map.entry("web", 7),
            Map.entry("cli", 7),
            Map.entry("", 8)));

    private static final int HIGHEST_PURE_LEVEL = 5;

    /** Which packages may touch which library; a library named nowhere here may be touched by none. */
    private static final Map<String, Set<String>> OWNERS = Map.ofEntries(
            Map.entry("com.fasterxml.jackson", Set.of("job")),
            Map.entry("org.apache.commons.csv", Set.of("wood", "pieces")),
            Map.entry("org.apache.pdfbox", Set.of("sheets")),
            Map.entry("org.apache.fontbox", Set.of("sheets")),
            Map.entry("java.awt", Set.of("sheets")),
            Map.entry("javax.imageio", Set.of("sheets")),
            Map.entry("picocli", Set.of("cli", "")),
            Map.entry("io.javalin", Set.of("web")),
            Map.entry("org.eclipse.jetty", Set.of("web")),
            Map.entry("gg.jte", Set.of("web")),
            Map.entry("java.sql", Set.of("store")),
            Map.entry("javax.sql", Set.of("store")),
            Map.entry("org.jdbi", Set.of("store")),
            Map.entry("org.flywaydb", Set.of("store")),
            Map.entry("org.sqlite", Set.of("store")),
            Map.entry(
                    "org.hipparchus",
                    Set.of("outline", "solid", "stock", "settings", "pieces", "frame", "turning", "match", "photo")),
            Map.entry("org.jspecify", LEVELS.keySet()));

    private static String feature(JavaClass type) {
        String name = type.getPackageName();
        if (name.equals("turnalike")) {
            return "";
        }
        String rest = name.substring("turnalike.".length());
        return rest.contains(".") ? rest.substring(0, rest.indexOf('.')) : rest;
    }

    /** A feature that is in no row stands above all: it may use nothing wrongly and nothing may use it. */
    private static int level(String feature) {
        return LEVELS.getOrDefault(feature, Integer.MAX_VALUE);
    }

    private static boolean ours(JavaClass type) {
        return type.getPackageName().equals("turnalike")
                || type.getPackageName().startsWith("turnalike.");
    }

    private static ArchCondition<JavaClass> useOnlyLowerLevels() {
        return new ArchCondition<>("use only packages of a lower level") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                String from = feature(type);
                type.getDirectDependenciesFromSelf().stream()
                        .filter(dependency -> ours(dependency.getTargetClass()))
                        .filter(dependency ->
                                !feature(dependency.getTargetClass()).equals(from))
                        .filter(dependency -> !allowed(from, feature(dependency.getTargetClass())))
                        .forEach(dependency ->
                                events.add(SimpleConditionEvent.violated(type, dependency.getDescription())));
            }
        };
    }

    private static boolean allowed(String from, String to) {
        boolean sheetsDraw = from.equals("sheets") && to.equals("drawing");
        return sheetsDraw || level(from) > level(to);
    }

    private static final ArchRule LEVEL_RULE = classes()
            .should(useOnlyLowerLevels())
            .because("a newcomer can read the packages from the bottom up, and a change in one never reaches below it");

    @Test
    void every_package_has_its_level() {
        Set<String> known = new TreeSet<>();
        CLASSES.forEach(type -> known.add(feature(type)));
        assertThat(LEVELS.keySet()).containsAll(known);
    }

    @Test
    void arrows_point_down() {
        LEVEL_RULE.check(CLASSES);
    }

    @Test
    void an_arrow_that_points_up_is_noticed() {
        JavaClasses planted = new ClassFileImporter().importClasses(PlantedViolation.class);
        assertThat(LEVEL_RULE.evaluate(planted).hasViolation()).isTrue();
    }

    @Test
    void there_are_no_cycles() {
        slices().matching("turnalike.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void each_library_has_its_owners() {
        OWNERS.forEach((library, owners) -> {
            String[] packages = owners.stream()
                    .map(owner -> owner.isEmpty() ? "turnalike" : "turnalike." + owner + "..")
                    .toArray(String[]::new);
            noClasses()
                    .that(resideOutsideOfPackages(packages))
                    .should()
                    .dependOnClassesThat(resideInAnyPackage(library + ".."))
                    .because("a library that one feature owns can be changed in one place")
                    .allowEmptyShould(true)
                    .check(CLASSES);
        });
    }

    @Test
    void no_other_library_creeps_in() {
        String[] known = OWNERS.keySet().stream().map(library -> library + "..").toArray(String[]::new);
        noClasses()
                .should()
                .dependOnClassesThat(resideOutsideOfPackages("turnalike..", "java..", "javax..")
                        .and(resideOutsideOfPackages(known)))
                .because("a new library is a decision: it gets an owner in this test")
                .check(CLASSES);
    }

    /** Reading shipped tables from the class path is the one exception: {@code getResourceAsStream} hands out an InputStream. */
    @Test
    void the_domain_does_no_input_or_output() {
        noClasses()
                .that(pure())
                .should()
                .dependOnClassesThat(resideInAnyPackage("java.nio.file..", "java.net..", "java.sql..", "javax.."))
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching("java\\.io\\.(File|RandomAccessFile|PrintStream).*")
                .because(
                        "levels 0 to 5 are handed their text and give back values, so that every test is quick and sure")
                .check(CLASSES);
        noClasses()
                .that(pure())
                .and()
                .haveNameNotMatching("turnalike\\.wood\\..*")
                .should()
                .dependOnClassesThat()
                .areAssignableTo(InputStream.class)
                .because("only the wood tables are read from the class path")
                .check(CLASSES);
    }

    @Test
    void the_domain_has_no_clock_no_dice_and_no_place() {
        noClasses()
                .that(pure())
                .should()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callConstructor(java.util.Random.class)
                .orShould()
                .callMethod(java.util.Locale.class, "getDefault")
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching(
                        "java\\.time\\.Clock|java\\.util\\.concurrent\\.ThreadLocalRandom|java\\.security\\.SecureRandom")
                .because("the same job gives the same plan on every machine, every day")
                .check(CLASSES);
    }

    private static com.tngtech.archunit.base.DescribedPredicate<JavaClass> pure() {
        return com.tngtech.archunit.base.DescribedPredicate.describe(
                "are in the domain", type -> ours(type) && level(feature(type)) <= HIGHEST_PURE_LEVEL);
    }

    @Test
    void every_package_is_null_marked_and_says_what_it_is_for() throws ClassNotFoundException {
        Set<String> packages = new TreeSet<>();
        CLASSES.forEach(type -> packages.add(type.getPackageName()));
        for (String name : packages) {
            Class<?> info = Class.forName(name + ".package-info");
            assertThat(info.isAnnotationPresent(NullMarked.class)).as(name).isTrue();
        }
    }

    @Test
    void no_two_types_have_one_name() {
        Map<String, Set<String>> packages = packagesByName(CLASSES.stream().filter(type -> !type.isNestedClass()));
        assertThat(packages).hasSizeGreaterThan(300);
        packages.values().removeIf(its -> its.size() == 1);
        assertThat(packages).isEmpty();
    }

    @Test
    void a_name_that_stands_twice_is_noticed() {
        JavaClasses twice = new ClassFileImporter().importClasses(java.util.List.class, java.awt.List.class);
        assertThat(packagesByName(twice.stream()).get("List")).containsExactlyInAnyOrder("java.util", "java.awt");
    }

    private static Map<String, Set<String>> packagesByName(Stream<JavaClass> types) {
        Map<String, Set<String>> packages = new TreeMap<>();
        types.filter(type -> !type.getSimpleName().equals("package-info"))
                .forEach(type -> packages.computeIfAbsent(type.getSimpleName(), name -> new TreeSet<>())
                        .add(type.getPackageName()));
        return packages;
    }
}
