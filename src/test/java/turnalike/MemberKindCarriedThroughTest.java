package turnalike;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.edit.JobEdit;
import turnalike.job.edit.MemberEdit;
import turnalike.job.edit.UnitsChange;
import turnalike.job.kept.JobText;
import turnalike.language.Language;
import turnalike.language.Speech;
import turnalike.outline.Outline;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKey;
import turnalike.pattern.MemberKind;
import turnalike.pattern.Room;
import turnalike.pattern.Samples;
import turnalike.pattern.Sizes;
import turnalike.sheets.Paper;
import turnalike.sheets.PlanSheet;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.web.Served;

/**
 * What every kind of member must keep all through the program: a new one joins by its line in {@link Member#kinds} and its sample in
 * {@link Samples}, and whatever is forgotten fails here by name.
 */
class MemberKindCarriedThroughTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private static Path folder;

    private static Served served;
    private static String demo = "";

    @BeforeAll
    static void serve() throws Exception {
        served = Served.in(folder);
        demo = "/jobs/" + served.demo();
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    @Test
    void every_record_of_the_family_has_its_kind_in_the_list() {
        assertThat(MemberKind.all())
                .<Class<?>>extracting(kind -> kind.example().getClass())
                .containsExactlyInAnyOrder(Member.class.getPermittedSubclasses());
        assertThat(MemberKind.all()).extracting(MemberKind::word).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("turnalike.pattern.MemberKind#all")
    void a_kind_tells_what_it_is_and_each_of_its_keys(MemberKind kind) {
        assertThat(kind.example().kind()).isEqualTo(kind);
        assertThat(MemberKind.find(kind.word())).contains(kind);
        assertThat(kind.word()).matches("[a-z]+(-[a-z]+)*");
        assertThat(kind.words()).endsWith(".");
        assertThat(kind.shape()).isNotBlank();
        assertThat(kind.keys()).isNotEmpty();
        assertThat(kind.keys())
                .extracting(MemberKey::name)
                .doesNotHaveDuplicates()
                .doesNotContain("kind", MemberKey.NAME, MemberKey.BY_EYE);
        assertThat(kind.keys()).allSatisfy(key -> {
            assertThat(key.name()).matches("[a-z]+(_[a-z]+)*");
            assertThat(key.label()).isNotBlank();
            assertThat(key.hint().isBlank()).isEqualTo(key.isNeeded());
        });
    }

    @ParameterizedTest
    @MethodSource("turnalike.pattern.MemberKind#all")
    void a_member_is_made_again_of_its_own_sizes(MemberKind kind) {
        eachSample(kind, member -> {
            Sizes sizes = member.sizes();
            assertThat(kind.faults(sizes)).isEmpty();
            assertThat(kind.make(sizes)).isEqualTo(member);
        });
    }

    @ParameterizedTest
    @MethodSource("turnalike.pattern.MemberKind#all")
    void a_member_is_read_as_it_is_written(MemberKind kind) {
        eachSample(
                kind, member -> assertThat(read(job(member, UnitSystem.METRIC))).isEqualTo(member));
    }

    @ParameterizedTest
    @MethodSource("turnalike.pattern.MemberKind#all")
    void other_units_change_no_size(MemberKind kind) {
        eachSample(kind, member -> {
            JobText inches = job(member, UnitSystem.INCH);
            assertSame(read(after(inches, new UnitsChange(UnitSystem.METRIC))), read(inches), 1e-9);
        });
    }

    @ParameterizedTest
    @MethodSource("turnalike.pattern.MemberKind#all")
    void a_mirrored_member_is_written_as_it_is_mirrored(MemberKind kind) {
        eachSample(kind, member -> {
            JobText once = after(job(member, UnitSystem.METRIC), new MemberEdit(1, new MemberEdit.Mirror()));
            assertSame(read(once), member.mirrored(), 1e-5);
            assertSame(read(after(once, new MemberEdit(1, new MemberEdit.Mirror()))), member, 1e-5);
        });
    }

    @ParameterizedTest
    @MethodSource("turnalike.pattern.MemberKind#all")
    void its_end_can_be_moved(MemberKind kind) {
        eachSample(kind, member -> {
            Length longer = Length.ofMm(Math.ceil(member.length().mm()) + 3);
            String typed = Double.toString(longer.mm());
            JobText made = after(job(member, UnitSystem.METRIC), new MemberEdit(1, new MemberEdit.Boundary(typed)));
            assertThat(read(made).length().mm()).isCloseTo(longer.mm(), within(1e-4));
        });
    }

    @ParameterizedTest
    @MethodSource("turnalike.pattern.MemberKind#all")
    void a_new_one_can_exist_wherever_there_is_room(MemberKind kind) {
        Seeds.each(300, random -> {
            Length stock = Length.ofMm(6 + 90 * random.nextDouble());
            Room room = new Room(
                    Length.ofMm(0.5 + 200 * random.nextDouble()),
                    part(stock, random),
                    part(stock, random),
                    stock,
                    random.nextBoolean() ? UnitSystem.INCH : UnitSystem.METRIC);
            Sizes sizes = withDefaults(kind, kind.blank(room), stock);
            assertThat(kind.faults(sizes)).as("%s", room).isEmpty();
            Member made = kind.make(sizes);
            Outline outline = Outline.of(Length.ZERO, made.curves(Member.Ends.NEITHER), made.section());
            assertThat(made.length().mm())
                    .as("%s", room)
                    .isCloseTo(room.length().mm(), within(1e-9));
            assertThat(2 * made.reach(outline).mm()).as("%s", room).isLessThanOrEqualTo(stock.mm() * (1 + 1e-12));
        });
    }

    /** Now and then all of it, and often nearly nothing. */
    private static Length part(Length stock, Random random) {
        return random.nextInt(5) == 0 ? stock : stock.times(Math.max(0.02, Math.pow(random.nextDouble(), 2)));
    }

    private static Sizes withDefaults(MemberKind kind, Sizes blank, Length stock) {
        Sizes out = blank;
        for (MemberKey key : kind.keys()) {
            boolean left =
                    key.type() == MemberKey.Type.LENGTH && out.find(key.name()).isEmpty();
            if (left && key.otherwise().apply(stock).isPresent()) {
                out = out.with(key.name(), key.otherwise().apply(stock).get());
            }
        }
        return out;
    }

    @ParameterizedTest
    @MethodSource("turnalike.pattern.MemberKind#all")
    void the_page_shows_all_its_keys_and_the_help_its_picture(MemberKind kind) throws Exception {
        assertThat(served.post(demo + "/member/3/turn", "kind=" + kind.word()).statusCode())
                .isIn(303, 200);
        for (String view : List.of("?member=3", "/turning", "/sheets/outline.dxf", "/job.json")) {
            assertThat(served.get(demo + view).statusCode()).as(view).isEqualTo(200);
        }
        String page = served.get(demo + "?member=3").body();
        Stream.concat(kind.keys().stream().map(MemberKey::name), Stream.of(MemberKey.NAME, MemberKey.BY_EYE))
                .forEach(key -> assertThat(page).contains("id=\"f-%s\" name=\"%s\"".formatted(key, key)));
        Matcher handles = Pattern.compile("data-key=\"([^\"]*)\"").matcher(page);
        while (handles.find()) {
            assertThat(kind.find(MemberKey.Type.LENGTH, handles.group(1)))
                    .as("the key of a handle")
                    .isPresent();
        }
        String help = served.get("/help").body();
        String told = help.substring(help.indexOf("<li id=\"%s\"".formatted(kind.word())));
        assertThat(told.substring(0, told.indexOf("</li>"))).contains("<svg", "<path", kind.words());
    }

    @ParameterizedTest
    @MethodSource("turnalike.pattern.MemberKind#all")
    void what_its_sheets_say_of_it_has_its_german(MemberKind kind) {
        Plan plan = Plan.of(job(kind.example(), UnitSystem.METRIC).job(), Effort.ofAsks(100));
        Set<String> missing = Speech.heardIn(() -> {
            PlanSheet.BENCH_CARD.of(plan, Paper.A4);
            PlanSheet.CUT_ORDER.of(plan, Paper.A4);
        });
        missing.removeIf(Language.GERMAN::knows);
        assertThat(missing).isEmpty();
    }

    @Test
    void the_job_files_table_says_what_every_kind_says() throws Exception {
        String page = Files.readString(Path.of("docs/job-file.md"));
        assertThat(page.lines().filter(line -> line.matches("\\| `[a-z-]+` \\| `(length|points)`.*")))
                .as("the table of members in docs/job-file.md")
                .containsExactlyElementsOf(MemberKind.all().stream()
                        .map(MemberKindCarriedThroughTest::row)
                        .toList());
    }

    private static String row(MemberKind kind) {
        String keys = kind.keys().stream()
                .map(key -> "`%s`".formatted(key.name()) + (key.note().isEmpty() ? "" : " (" + key.note() + ")"))
                .collect(Collectors.joining(", "));
        return "| `%s` | %s | %s |".formatted(kind.word(), keys, kind.shape());
    }

    private interface Check {
        void of(Member member);
    }

    private static void eachSample(MemberKind kind, Check check) {
        Seeds.each(20, random -> {
            for (int i = 0; i < Samples.KINDS; i++) {
                Member member = Samples.member(i, random);
                if (member.kind() == kind) {
                    check.of(member);
                }
            }
        });
        check.of(kind.example());
    }

    /** A job whose run is that member alone, its sizes bare numbers in those units. */
    private static JobText job(Member member, UnitSystem units) {
        ObjectNode root = JSON.createObjectNode()
                .put("format", "turnalike-job")
                .put("version", 1)
                .put("title", "New job")
                .put("units", units.symbol());
        ObjectNode pattern = root.putObject("pattern").put("name", "New job");
        pattern.putObject("stock").put("section", "square").put("size", "60 mm").put("length", "900 mm");
        ObjectNode written = pattern.putArray("members").addObject();
        written.put("kind", member.kind().word());
        Sizes sizes = member.sizes();
        for (MemberKey key : member.kind().keys()) {
            switch (key.type()) {
                case LENGTH -> sizes.find(key.name()).ifPresent(size -> written.put(key.name(), count(size, units)));
                case POINTS -> points(written.putArray(key.name()), sizes.points(), units);
            }
        }
        root.putObject("wood").put("density_kg_m3", 700);
        JobText.Read read = JobText.read(root.toString());
        assertThat(read.problems()).as("%s", member).isEmpty();
        return read.text().orElseThrow();
    }

    private static void points(ArrayNode out, List<FreeCurve.Point> points, UnitSystem units) {
        points.forEach(point -> out.addArray().add(count(point.place(), units)).add(count(point.diameter(), units)));
    }

    private static double count(Length length, UnitSystem units) {
        // In inches to as many places as a unit may be written behind.
        return units == UnitSystem.INCH ? Math.rint(length.inches() * 1e6) / 1e6 : length.mm();
    }

    private static JobText after(JobText text, JobEdit edit) {
        JobText.Read read = edit.on(text);
        assertThat(read.problems()).isEmpty();
        return read.text().orElseThrow();
    }

    private static Member read(JobText text) {
        return text.job().pattern().members().get(0);
    }

    private static void assertSame(Member is, Member was, double mm) {
        assertThat(is.kind()).isEqualTo(was.kind());
        List<Length> ofIs = lengths(is);
        List<Length> ofWas = lengths(was);
        assertThat(ofIs).hasSameSizeAs(ofWas);
        for (int i = 0; i < ofWas.size(); i++) {
            assertThat(ofIs.get(i).mm()).as("%s", was).isCloseTo(ofWas.get(i).mm(), within(mm));
        }
    }

    private static List<Length> lengths(Member member) {
        Sizes sizes = member.sizes();
        List<Length> out = new ArrayList<>(sizes.lengths().values());
        sizes.points().forEach(point -> out.addAll(List.of(point.place(), point.diameter())));
        return out;
    }
}
