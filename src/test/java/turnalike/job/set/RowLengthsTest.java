package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.OneLength;
import turnalike.job.Plan;
import turnalike.job.answer.MatchJson;
import turnalike.job.answer.PlanJson;
import turnalike.job.boards.JobBlanks;
import turnalike.job.fields.Json;
import turnalike.job.fields.Reading;
import turnalike.job.pieces.ColumnTargets;
import turnalike.job.pieces.ControlReport;
import turnalike.job.pieces.LikenessReport;
import turnalike.job.pieces.MatchJob;
import turnalike.job.pieces.MendJob;
import turnalike.job.read.JobReader;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.control.ChartConstants;
import turnalike.pieces.control.RuleChoice;
import turnalike.pieces.mend.MendPlan;
import turnalike.solid.Solid;
import turnalike.stock.boards.Board;
import turnalike.stock.boards.Wanted;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.Problem;

/** An invented stair: one turning over squares of two or three lengths. */
class RowLengthsTest {
    private static final String LENGTHS =
            "[{\"stretch\": 0, \"length\": 150, \"count\": 4}, {\"stretch\": 0, \"length\": 230, \"count\": 2}]";

    private static String text(String frame) {
        return """
                {"format": "turnalike-job", "version": 1, "title": "Stair (invented)", "units": "mm",
                 "pattern": {"name": "Post", "stock": {"section": "square", "size": 42, "length": 700},
                  "members": [{"kind": "square", "length": 180}, {"kind": "bead", "length": 20, "root": 30, "crown": 40},
                   {"kind": "taper", "length": 400, "from": 36, "to": 26},
                   {"kind": "curve", "points": [[0, 26], [20, 30], [40, 24]]},
                   {"kind": "tenon", "length": 20, "diameter": 20, "chamfer": 2}]},
                 "checks": [{"at": 100}, {"at": 400}],
                 "wood": {"density_kg_m3": 600}, %s}
                """.formatted(frame);
    }

    private static String row(String more) {
        return text("\"frame\": {\"kind\": \"row\", %s}".formatted(more));
    }

    private static Job job(String text) {
        Job.Read read = JobReader.read(text);
        assertThat(read.problems()).isEmpty();
        return read.job().orElseThrow();
    }

    @Test
    void each_length_has_its_own_stock_marks_and_settings_and_common_marks_are_told_once() {
        Job job = job(row("\"lengths\": " + LENGTHS));
        assertThat(job.count()).isEqualTo(6);
        JsonNode plan = Json.parse(PlanJson.print(Plan.of(job, Effort.unlimited())), new Reading())
                .orElseThrow();
        assertThat(plan.get("lengths")).hasSize(2);
        int[][] wanted = {{150, 4, 630, 670}, {230, 2, 710, 750}};
        for (int i = 0; i < 2; i++) {
            JsonNode each = plan.get("lengths").get(i);
            assertThat(each.get("letter").asText()).isEqualTo(i == 0 ? "A" : "B");
            assertThat(each.get("stretch").asInt()).isZero();
            assertThat(each.get("length_mm").asDouble()).isCloseTo(wanted[i][0], within(1e-9));
            assertThat(each.get("count").asInt()).isEqualTo(wanted[i][1]);
            assertThat(each.get("overall_mm").asDouble()).isCloseTo(wanted[i][2], within(1e-9));
            assertThat(each.at("/stock/blank/length_mm").asDouble()).isCloseTo(wanted[i][3], within(1e-9));
            assertThat(each.get("marks").get(1).get("mm").asDouble()).isCloseTo(wanted[i][0], within(1e-9));
            // A square of 42 mm in wood of 600 kg/m3 weighs this much a millimetre more.
            double more = (wanted[i][0] - 180) * 42 * 42 * 600e-6;
            assertThat(each.at("/solid/mass_g").asDouble())
                    .isCloseTo(plan.at("/solid/mass_g").asDouble() + more, within(1e-6));
            assertThat(each.at("/settings/dividers")).isNotEmpty();
            assertThat(each.at("/turning/cuts")).isNotEmpty();
        }
        JsonNode common = plan.get("common_marks");
        assertThat(common).hasSize(plan.get("marks").size());
        assertThat(common.get(0).get("from").asText()).isEqualTo("start");
        assertThat(common.get(1).get("from").asText()).isEqualTo("end");
        assertThat(common.get(1).get("mm").asDouble()).isCloseTo(480, within(1e-9));
        assertThat(plan.at("/lengths_total/count").asInt()).isEqualTo(6);
        assertThat(plan.at("/lengths_total/blanks").asInt())
                .isEqualTo(plan.at("/lengths/0/stock/blanks").asInt()
                        + plan.at("/lengths/1/stock/blanks").asInt());
    }

    /** In turn on a rake by which each is just as much longer as the rail rises: the feet of a tread are level, told pair by pair. */
    @Test
    void openings_are_told_for_every_two_lengths_side_by_side() {
        String keys =
                "\"clear\": 620, \"rake_deg\": %s, \"largest_opening\": 95, \"lengths_stand\": \"in_turn\", \"lengths\": "
                        + "[{\"stretch\": 0, \"length\": 150, \"count\": 3}, {\"stretch\": 0, \"length\": 230, \"count\": 3}]";
        double pitch = (620 + 42) / 7.0;
        double rake = Math.toDegrees(Math.atan(80 / pitch));
        JsonNode frame = frame(row(keys.formatted(rake)));
        // A code's figure is offered with how far it is known; the limit stays the job's own.
        assertThat(frame.at("/code_figure/ball_mm").asDouble()).isCloseTo(101.6, within(1e-9));
        assertThat(frame.at("/code_figure/from").asText()).contains("R312.1.3");
        assertThat(frame.at("/code_figure/status").asText()).contains("not in the code itself", "local authority");
        assertThat(frame.get("limit_mm").asDouble()).isEqualTo(95);
        assertThat(frame.get("pitch_mm").asDouble()).isCloseTo(pitch, within(1e-9));
        JsonNode pairs = frame.at("/openings/by_lengths");
        assertThat(pairs).hasSize(2);
        assertThat(pairs.get(0).get("left").asText() + pairs.get(0).get("right").asText())
                .isEqualTo("AB");
        assertThat(pairs.get(0).get("foot_rise_mm").asDouble()).isCloseTo(0, within(1e-9));
        assertThat(pairs.get(1).get("foot_rise_mm").asDouble()).isCloseTo(160, within(1e-9));
        double widest = Math.max(
                pairs.get(0).get("ball_mm").asDouble(),
                pairs.get(1).get("ball_mm").asDouble());
        assertThat(frame.at("/openings/between_mm").asDouble()).isEqualTo(widest);
        assertThat(frame.at("/openings/widest_mm").asDouble()).isGreaterThanOrEqualTo(widest);
        // Feet level and squares of 42 mm beside one another for 150 mm: nowhere nearer.
        assertThat(frame.get("gap_mm").asDouble()).isCloseTo(pitch - 42 * Math.sqrt(2), within(1e-3));
    }

    /** Together, two of one length are what a job of that length alone tells. */
    @Test
    void of_one_length_it_is_what_a_job_of_that_length_tells() {
        JsonNode both = frame(row("\"clear\": 620, \"rake_deg\": 33, \"lengths\": " + LENGTHS));
        JsonNode alone = frame(row("\"clear\": 620, \"rake_deg\": 33, \"places\": 6")
                .replace("\"kind\": \"square\", \"length\": 180", "\"kind\": \"square\", \"length\": 230")
                .replace("\"length\": 700", "\"length\": 750"));
        JsonNode pairs = both.at("/openings/by_lengths");
        assertThat(pairs).hasSize(3);
        assertThat(pairs.get(2).get("left").asText()).isEqualTo("B");
        assertThat(pairs.get(2).get("ball_mm").asDouble())
                .isCloseTo(alone.at("/openings/between_mm").asDouble(), within(1e-5));
    }

    private static JsonNode frame(String text) {
        return Json.parse(PlanJson.print(Plan.of(job(text), Effort.ofAsks(500))), new Reading())
                .orElseThrow()
                .get("frame");
    }

    /** A piece of length B is mended as a job of B alone would mend it; those of length A count by their share of the weight. */
    @Test
    void a_piece_is_mended_by_its_own_length() {
        Job stair = job(row("\"lengths\": " + LENGTHS));
        Job alone = OneLength.of(stair).get(1).job();
        double a = solidG(OneLength.of(stair).get(0).job());
        double b = solidG(alone);
        List<Piece> mixed =
                List.of(weighed("A1", a), weighed("A2", 1.001 * a), weighed("A3", a), weighed("B1", 1.01 * b));
        List<Piece> own =
                List.of(weighed("A1", b), weighed("A2", 1.001 * b), weighed("A3", b), weighed("B1", 1.01 * b));
        MendJob mended = MendJob.of(stair, mixed, "B1", Optional.empty());
        assertThat(mended.target().grams()).isCloseTo(b, within(1e-9));
        assertThat(mended.plan())
                .isEqualTo(MendJob.of(alone, own, "B1", Optional.empty()).plan());
        assertThat(mended.plan()).isInstanceOf(MendPlan.Cuts.class);
        assertThat(MendJob.lack(stair, List.of(weighed("7", b), weighed("A1", a)), "7", Optional.empty()))
                .contains(MendJob.Lack.LENGTH);
    }

    /** Turned exactly as drawn in either length, none is unlike and nothing drifts, however they are mixed. */
    @Test
    void lengths_are_compared_and_charted_as_if_of_one() {
        Job stair = job(row("\"lengths\": " + LENGTHS));
        double a = solidG(OneLength.of(stair).get(0).job());
        double b = solidG(OneLength.of(stair).get(1).job());
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            boolean first = i % 3 != 0;
            Measures each =
                    Measures.ofMass(Mass.ofGrams(first ? a : b)).with(Column.LENGTH, Length.ofMm(first ? 630 : 710));
            pieces.add(Piece.of("p" + i, each));
        }
        assertThat(LikenessReport.of(stair, pieces, MassUnit.GRAM).pieces())
                .allSatisfy(each -> assertThat(each.figure().figure()).isCloseTo(0, within(1e-9)));
        assertThat(LikenessReport.mostUnlike(stair, pieces, MassUnit.GRAM, 3))
                .allSatisfy(each -> assertThat(each.figure().figure()).isCloseTo(0, within(1e-9)));
        ControlReport chart = ControlReport.of(
                        Optional.of(stair), pieces, "mass_g", ChartConstants.PRINTED, RuleChoice.SELF_STARTING)
                .fold(report -> report, (what, mend) -> {
                    throw new AssertionError(what);
                });
        assertThat(chart.series().points())
                .allSatisfy(point -> assertThat(point.value()).isCloseTo(solidG(stair), within(1e-9)));
        assertThat(chart.things()).contains("as of the drawn length");
    }

    private static double solidG(Job job) {
        return Solid.of(job.pattern().outline(), job.wood().density()).mass().grams();
    }

    private static Piece weighed(String label, double grams) {
        return Piece.of(label, Measures.ofMass(Mass.ofGrams(grams)));
    }

    @Test
    void boards_are_cut_into_a_blank_length_for_each() {
        List<JobBlanks.Named> named =
                JobBlanks.named(List.of("stair.job.json"), List.of(job(row("\"lengths\": " + LENGTHS))));
        assertThat(named.stream().map(JobBlanks.Named::name))
                .containsExactly("Stair (invented): A, 630 mm long", "Stair (invented): B, 710 mm long");
        Board board = new Board(
                "one",
                Length.ofMm(60),
                Length.ofMm(200),
                Length.ofMm(3000),
                1,
                Optional.empty(),
                Optional.empty(),
                List.of());
        List<Wanted> wanted = JobBlanks.order(named, List.of(board)).wanted();
        // Rough: the blank milled, and trimmed at either end.
        assertThat(wanted.get(1).length().minus(wanted.get(0).length()).mm()).isCloseTo(80, within(1e-9));
        assertThat(wanted.get(0).count()).isGreaterThanOrEqualTo(4);
        assertThat(wanted.get(1).count()).isGreaterThanOrEqualTo(2);
    }

    @Test
    void a_crest_inside_the_stretch_is_common_to_none_and_check_places_keep_to_the_turning() {
        Job job = job(
                row(
                        "\"lengths\": [{\"stretch\": 1, \"length\": 20, \"count\": 1}, {\"stretch\": 1, \"length\": 30, \"count\": 1}]"));
        Plan plan = Plan.of(job, Effort.unlimited());
        JsonNode json = Json.parse(PlanJson.print(plan), new Reading()).orElseThrow();
        assertThat(json.at("/lengths/1/marks/1/common").asBoolean()).isTrue();
        assertThat(json.at("/lengths/1/marks/2/label").asText()).contains("crest");
        assertThat(json.at("/lengths/1/marks/2/common").asBoolean()).isFalse();
        assertThat(json.at("/lengths/1/marks/2/mm").asDouble()).isCloseTo(195, within(1e-9));
        assertThat(plan.lengths().get(1).plan().job().checks().stream()
                        .map(check -> check.at().mm()))
                .containsExactly(100.0, 410.0);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        [{"stretch": 5, "length": 10, "count": 1}] | frame: lengths 1: stretch: was 5, but the pattern has 5 members; give 0 for the first to 4
        [{"stretch": 0, "length": 0, "count": 1}] | frame: lengths 1: length: must be above zero; give a size above zero
        [{"stretch": 0, "length": "-3", "count": 1}] | frame: lengths 1: length:
        [{"stretch": 3, "length": 50, "count": 1}] | of member 4 (curve): is what a curve has none of: its points say how long it is; name a member
        [{"stretch": 4, "length": 1, "count": 1}] | of member 5 (tenon):
        [{"stretch": 0, "length": 50}] | frame: lengths 1: count: is missing; give a whole number from 1 to 400
        [{"stretch": 0, "length": 50, "count": 1, "note": 1}] | frame: lengths 1: has an unknown key 'note'
        [{"stretch": 0, "length": 50, "count": 1}, {"stretch": 2, "length": 270, "count": 1}] | frame: lengths 2: makes pieces of 530 mm
        [] | frame: lengths: has 0 entries; give 1 to 26
        7 | frame: lengths: is no list
        [7] | frame: lengths 1: is no object, was 7
        """)
    void what_cannot_be_is_told(String lengths, String line) {
        assertThat(JobReader.read(row("\"lengths\": " + lengths)).problems().stream()
                        .map(Problem::line))
                .anyMatch(told -> told.contains(line.strip()));
    }

    @Test
    void counts_must_add_up_to_the_places_and_to_the_job_s_count() {
        assertThat(JobReader.read(row("\"places\": 7, \"lengths\": " + LENGTHS)).problems())
                .extracting(Problem::line)
                .containsExactly(
                        "frame: lengths: count 6 pieces in all, but places says 7; make the counts add up to 7, or change that"
                                + " to 6");
        assertThat(JobReader.read(text(
                                "\"count\": 8, \"frame\": {\"kind\": \"row\", \"lengths\": %s}".formatted(LENGTHS)))
                        .problems())
                .extracting(Problem::line)
                .containsExactly(
                        "frame: lengths: count 6 pieces in all, but the job's count is 8; make the counts add up to 8, or change"
                                + " that to 6");
        assertThat(JobReader.read(row("\"places\": 7, \"lengths_stand\": \"in_turn\""))
                        .problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.where()).isEqualTo("frame: lengths_stand"));
    }

    private static Piece piece(String label, double grams, double lengthMm) {
        Measures weighed = Measures.ofMass(Mass.ofGrams(grams));
        return Piece.of(label, lengthMm > 0 ? weighed.with(Column.LENGTH, Length.ofMm(lengthMm)) : weighed);
    }

    private static List<Piece> stock(int a, int b, boolean measured) {
        Random random = new Random(4);
        List<Piece> out = new ArrayList<>();
        for (int i = 0; i < a + b; i++) {
            boolean first = i < a;
            double mass = (first ? 470 : 540) + random.nextGaussian();
            out.add(piece(
                    (first ? "A" : "B") + i, mass, measured ? (first ? 630 : 710) + 0.2 * random.nextGaussian() : 0));
        }
        return out;
    }

    private static List<String> wanted(JsonNode match) {
        List<String> out = new ArrayList<>();
        match.get("places").forEach(place -> {
            assertThat(place.get("piece").asText())
                    .startsWith(place.get("length").asText());
            out.add(place.get("length").asText());
        });
        return out;
    }

    private static JsonNode match(Job job, List<Piece> pieces) {
        assertThat(MatchJob.problems(job, pieces)).isEmpty();
        ObjectNode json = Json.parse(
                        MatchJson.print(MatchJob.of(job, pieces, false, Effort.ofAsks(2000)), List.of()), new Reading())
                .orElseThrow();
        return json;
    }

    @Test
    void pieces_of_one_length_stand_together_or_in_turn() {
        Job together = job(row("\"lengths\": " + LENGTHS));
        Job inTurn = job(row("\"lengths_stand\": \"in_turn\", \"lengths\": " + LENGTHS));
        for (boolean measured : new boolean[] {true, false}) {
            for (int more : new int[] {0, 9}) {
                List<Piece> pieces = stock(5 + more, 3 + more, measured);
                assertThat(wanted(match(together, pieces))).containsExactly("A", "A", "A", "A", "B", "B");
                assertThat(wanted(match(inTurn, pieces))).containsExactly("A", "A", "B", "A", "A", "B");
            }
        }
        assertThat(match(together, stock(5, 3, true)).get("best_proven").asBoolean())
                .isTrue();
    }

    @Test
    void pieces_whose_length_nobody_tells_or_that_are_too_few_are_told() {
        Job job = job(row("\"lengths\": " + LENGTHS));
        List<Piece> pieces = stock(5, 3, false);
        pieces.add(piece("7", 500, 0));
        assertThat(MatchJob.problems(job, pieces))
                .extracting(Problem::line)
                .containsExactly(
                        "piece 7: nothing says which of the row's lengths it is made in; fill in its length, or let its label begin with the"
                                + " letter: A for the first, B for the last");
        assertThat(MatchJob.problems(job, stock(7, 1, true)))
                .extracting(Problem::line)
                .containsExactly("pieces: 1 of length B (710 mm) for 2 places; log 1 more of that length");
    }

    @Test
    void a_length_between_two_is_asked_about_and_no_other_question_comes_of_there_being_two() {
        Job job = job(row("\"lengths\": " + LENGTHS));
        List<Piece> pieces = stock(8, 8, true);
        assertThat(ColumnTargets.questions(job, read(pieces))).isEmpty();
        pieces.add(piece("17", 480, 664));
        assertThat(ColumnTargets.questions(job, read(pieces))).anySatisfy(slip -> assertThat(slip.question())
                .isEqualTo("664 mm is near none of the lengths: is it one of A (630 mm)? It is taken as one"));
    }

    private static PiecesFile.Read read(List<Piece> pieces) {
        return new PiecesFile.Read(pieces, List.of(), List.of(), MassUnit.GRAM);
    }
}
