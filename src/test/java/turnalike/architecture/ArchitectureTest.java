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
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import turnalike.job.Job;
import turnalike.job.PlantedRoomViolation;
import turnalike.job.read.JobReader;
import turnalike.outline.PlantedViolation;

/** Holds the arrows between the packages: a folder is a feature, and features stand on levels. */
class ArchitectureTest {
    private static final JavaClasses CLASSES = Levels.classes();

    private static final int HIGHEST_PURE_LEVEL = 5;

    /** Which features may touch which library; a library named nowhere here may be touched by none. */
    private static final Map<String, Set<String>> OWNERS = Map.ofEntries(
            Map.entry("com.fasterxml.jackson", Set.of("job")),
            Map.entry("org.apache.commons.csv", Set.of("csv", "wood")),
            Map.entry("org.dhatim.fastexcel", Set.of("workbook")),
            Map.entry("org.apache.commons.compress", Set.of("workbook")),
            Map.entry("org.apache.pdfbox", Set.of("sheets")),
            Map.entry("org.apache.fontbox", Set.of("sheets")),
            Map.entry("boofcv", Set.of("photo")),
            Map.entry("georegression", Set.of("photo")),
            Map.entry("org.ddogleg", Set.of("photo")),
            Map.entry("com.drew", Set.of("photo")),
            Map.entry("java.awt.image", Set.of("photo")),
            Map.entry("javax.imageio", Set.of("photo")),
            Map.entry("picocli", Set.of("cli")),
            Map.entry("io.javalin", Set.of("web")),
            Map.entry("org.eclipse.jetty", Set.of("web")),
            Map.entry("jakarta.servlet", Set.of("web")),
            Map.entry("gg.jte", Set.of("web")),
            Map.entry("java.sql", Set.of("store")),
            Map.entry("org.postgresql", Set.of("store")),
            Map.entry("org.sqlite", Set.of("store")));

    /** Used by all; it has no part in what the program does. */
    private static final String ANNOTATIONS = "org.jspecify";

    /** Parts of Java that no feature uses: pictures are made in {@code drawing}, and the store opens its one file itself. */
    private static final List<String> UNUSED_JAVA = List.of(
            "java.awt.color", "java.awt.event", "java.awt.font", "java.awt.geom", "java.awt.print", "javax.sql");

    private static ArchCondition<JavaClass> useOnlyLower(String what, BiPredicate<JavaClass, JavaClass> allowed) {
        return new ArchCondition<>("use only %s of a lower level".formatted(what)) {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                type.getDirectDependenciesFromSelf().stream()
                        .filter(dependency -> Levels.isOurs(dependency.getTargetClass()))
                        .filter(dependency -> !allowed.test(type, dependency.getTargetClass()))
                        .forEach(dependency ->
                                events.add(SimpleConditionEvent.violated(type, dependency.getDescription())));
            }
        };
    }

    private static final ArchRule LEVEL_RULE = classes()
            .should(useOnlyLower("features", (from, to) -> Levels.mayUse(Levels.feature(from), Levels.feature(to))))
            .because("a newcomer can read the packages from the bottom up, and a change in one never reaches below it");

    private static final ArchRule ROOM_RULE = classes()
            .should(useOnlyLower(
                    "rooms",
                    (from, to) -> !Levels.feature(from).equals(Levels.feature(to))
                            || Levels.roomMayUse(Levels.feature(from), Levels.room(from), Levels.room(to))))
            .because("what holds between the features holds within each");

    private static final ArchRule CYCLE_RULE =
            slices().matching("turnalike.(**)").should().beFreeOfCycles();

    @Test
    void every_package_has_its_level() {
        Map<String, Set<String>> rooms = Levels.roomsOf(CLASSES);
        assertThat(Levels.FEATURES.keySet()).isEqualTo(rooms.keySet());
        rooms.forEach(
                (feature, its) -> assertThat(Levels.rooms(feature).stream().flatMap(Set::stream))
                        .as("the rooms of %s", feature)
                        .containsExactlyInAnyOrderElementsOf(its));
    }

    @Test
    void arrows_point_down() {
        LEVEL_RULE.check(CLASSES);
        ROOM_RULE.check(CLASSES);
    }

    @Test
    void an_arrow_that_points_up_is_noticed() {
        JavaClasses planted = new ClassFileImporter().importClasses(PlantedViolation.class);
        assertThat(LEVEL_RULE.evaluate(planted).hasViolation()).isTrue();
        JavaClasses room = new ClassFileImporter().importClasses(PlantedRoomViolation.class);
        assertThat(LEVEL_RULE.evaluate(room).hasViolation()).isFalse();
        assertThat(ROOM_RULE.evaluate(room).hasViolation()).isTrue();
    }

    @Test
    void there_are_no_cycles() {
        CYCLE_RULE.check(CLASSES);
    }

    @Test
    void a_cycle_within_a_feature_is_noticed() {
        JavaClasses planted =
                new ClassFileImporter().importClasses(PlantedRoomViolation.class, JobReader.class, Job.class);
        assertThat(CYCLE_RULE.evaluate(planted).hasViolation()).isTrue();
    }

    private static ArchRule ownedBy(String library, Set<String> owners) {
        String[] packages = owners.stream()
                .map(owner -> owner.isEmpty() ? "turnalike" : "turnalike." + owner + "..")
                .toArray(String[]::new);
        return noClasses()
                .that(owners.isEmpty() ? Levels.ours() : resideOutsideOfPackages(packages))
                .should()
                .dependOnClassesThat(resideInAnyPackage(library + ".."))
                .because("a library that one feature owns can be changed in one place");
    }

    @Test
    void each_library_has_its_owners() {
        OWNERS.forEach((library, owners) -> ownedBy(library, owners).check(CLASSES));
        UNUSED_JAVA.forEach(part -> ownedBy(part, Set.of()).check(CLASSES));
    }

    /** Else a rule is kept for what is no longer there, or was never meant. */
    @Test
    void each_owner_uses_its_library() {
        OWNERS.forEach((library, owners) -> owners.forEach(owner -> {
            Set<String> others = new TreeSet<>(Levels.FEATURES.keySet());
            others.remove(owner);
            assertThat(ownedBy(library, others).evaluate(CLASSES).hasViolation())
                    .as("%s uses %s", owner, library)
                    .isTrue();
        }));
    }

    @Test
    void no_other_library_creeps_in() {
        String[] known = Stream.concat(OWNERS.keySet().stream(), Stream.of(ANNOTATIONS))
                .map(library -> library + "..")
                .toArray(String[]::new);
        noClasses()
                .should()
                .dependOnClassesThat(resideOutsideOfPackages("turnalike..", "java..", "javax..")
                        .and(resideOutsideOfPackages(known)))
                .because("a new library is a decision: it gets an owner in this test")
                .check(CLASSES);
    }

    /**
     * Reading shipped tables from the class path is one exception: {@code getResourceAsStream} hands out an InputStream. The other is
     * {@code photo}, which has Java's own readers decode a picture out of the bytes it was handed: they know only streams.
     */
    @Test
    void the_domain_does_no_input_or_output() {
        noClasses()
                .that(pure())
                .and()
                // Takes an SVG's text apart; it is handed the text, and follows nothing that the text names.
                .haveNameNotMatching("turnalike\\.trace\\.drawn\\.SvgNode")
                .should()
                .dependOnClassesThat(resideInAnyPackage("java.nio.file..", "java.net..", "java.sql..", "javax..")
                        .and(resideOutsideOfPackages("javax.imageio..")))
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching("java\\.io\\.(File|RandomAccessFile|PrintStream).*")
                .because(
                        "levels 0 to 5 are handed their text and give back values, so that every test is quick and sure")
                .check(CLASSES);
        noClasses()
                .that(pure())
                .and()
                .haveNameNotMatching("turnalike\\.(wood|photo|language)\\..*")
                .should()
                .dependOnClassesThat()
                .areAssignableTo(InputStream.class)
                .because(
                        "only the wood tables and the words of other languages are read from the class path, and a picture out of its bytes")
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
                "are in the domain",
                type -> Levels.isOurs(type) && Levels.level(Levels.feature(type)) <= HIGHEST_PURE_LEVEL);
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
        JavaClasses twice = new ClassFileImporter().importClasses(List.class, java.awt.List.class);
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
