package turnalike.web.match;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import turnalike.cli.match.MatchSummary;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.answer.MatchJson;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptPiece;
import turnalike.job.keys.KeyPaths;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.job.set.Frame;
import turnalike.job.set.FrameKind;
import turnalike.job.set.SetMatch;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.sheets.Paper;
import turnalike.sheets.SetPicture;
import turnalike.sheets.SetSheets;
import turnalike.sheets.Sheet;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.web.Served;

/** What every kind of frame must pass, from the job file to the page. A new kind is one line in {@link #sample}. */
class FrameKindsTest {
    private static final String JOB = """
            {"format": "turnalike-job", "version": 1, "units": "mm",
             "pattern": {"name": "Invented", "stock": {"section": "square", "size": 40, "length": 160},
              "members": [{"kind": "tenon", "length": 20, "diameter": 16}, {"kind": "cylinder", "length": 100, "diameter": 30},
               {"kind": "tenon", "length": 10, "diameter": 12}]},
             "wood": {"density_kg_m3": 700}, "tolerances": {"mass_pct": 10}, %s}
            """;

    /** Invented: nine pieces near to one another. */
    private static final String PIECES = """
            piece,mass_g,length
            p1,50.1,130.2
            p2,50.9,130.0
            p3,49.6,129.9
            p4,50.4,130.1
            p5,49.9,130.3
            p6,50.2,129.8
            p7,50.6,130.0
            p8,49.8,130.1
            p9,50.0,129.9
            """;

    /** A frame of that kind for fewer than nine pieces, with every key it has. */
    private static String sample(FrameKind kind) {
        return switch (kind) {
            case WHEEL -> """
                    {"kind": "wheel", "places": 4, "hub_radius": 60, "tenon_at": "end", "counterweight_radius": 90, "rpm": 30,
                     "hub_seat": 20, "hub_length": 90, "axle_hole": 12, "stagger": 2, "rim_seat": 15, "rim_width": 40, "rim_thickness": 30,
                     "segments": 4, "rim_wood": {"species": "White oak", "moisture_pct": 9}, "hub_wood": {"moisture_pct": 9, "density_kg_m3": 700},
                     "least_gap": 5, "least_wall": 6,
                     "seat_depths": [0, 0.1, 0, 0.2], "run_out": 0.5, "given_moments": [{"g_mm": 300, "at_deg": 90}],
                     "rocking": {"period_s": 6.4, "rests_at_deg": 90, "amplitude_deg": 10, "inertia_g_mm2": 2e8}}""";
            case ROW -> """
                    {"kind": "row", "places": 5, "seen_from": "end", "clear": 600, "largest_opening": 90, "rails_apart": 95,
                     "rake_deg": 12, "end": 70, "rail_wood": {"species": "White oak", "moisture_pct": 10}}""";
            case LEGS -> """
                    {"kind": "legs", "places": 4, "groups": 2, "rake_deg": 12, "splay_deg": 8, "height": 90, "seat_thickness": 25,
                     "apart": [200, 240], "stretchers": [30], "under": "seat", "seat_wood": {"species": "American elm", "moisture_pct": 10}}""";
        };
    }

    /** Keys of a sample that cannot stand beside others. */
    private static final Set<String> INSTEAD = Set.of(
            "frame.rocking.rim_mass_g",
            "frame.rocking.rim_radius",
            "frame.rim_segments_g", // the rocking test has felt the rim already
            "frame.rim_wood.density_kg_m3",
            "frame.hub_wood.species",
            "frame.rail_wood.density_kg_m3",
            "frame.seat_wood.density_kg_m3",
            "frame.foot_moves",
            // The invented pieces are all of one length.
            "frame.lengths",
            "frame.lengths_stand");

    private static Job job(String frame) {
        Job.Read read = JobReader.read(JOB.formatted("\"frame\": " + frame));
        assertThat(read.problems()).isEmpty();
        return read.job().orElseThrow();
    }

    private static Frame frame(FrameKind kind) {
        return job(sample(kind)).frame().orElseThrow();
    }

    private static List<Piece> pieces() {
        return PiecesFile.parse(PIECES, UnitSystem.METRIC).pieces();
    }

    private static SetMatch set(FrameKind kind) {
        Job job = job(sample(kind));
        assertThat(MatchJob.problems(job, pieces())).isEmpty();
        return MatchJob.of(job, pieces(), false, Effort.ofAsks(2000));
    }

    private static JsonNode tree(String text) throws IOException {
        return new ObjectMapper().readTree(text);
    }

    @Test
    void every_record_of_a_frame_is_the_one_of_its_kind() {
        Map<FrameKind, Class<?>> records = new EnumMap<>(FrameKind.class);
        for (FrameKind kind : FrameKind.values()) {
            assertThat(frame(kind).kind()).isEqualTo(kind);
            assertThat(FrameKind.find(kind.word())).contains(kind);
            records.put(kind, frame(kind).getClass());
        }
        assertThat(records.values()).containsExactlyInAnyOrder(Frame.class.getPermittedSubclasses());
    }

    @ParameterizedTest
    @EnumSource(FrameKind.class)
    void it_is_read_with_all_its_keys_and_no_other(FrameKind kind) throws IOException {
        Set<String> written = paths("frame", tree(sample(kind)));
        assertThat(keys(kind)).isEqualTo(plus(written, keys(kind), INSTEAD));
        Job.Read read =
                JobReader.read(JOB.formatted("\"frame\": " + sample(kind).replaceFirst("\\{", "{\"colour\": 1, ")));
        assertThat(read.problems()).anyMatch(problem -> problem.line().contains("colour"));
    }

    /** What is written, and those of {@code known} that stand in the place of others. */
    private static Set<String> plus(Set<String> written, Set<String> known, Set<String> instead) {
        return Stream.concat(written.stream(), known.stream().filter(instead::contains))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> keys(FrameKind kind) {
        Set<String> out = new TreeSet<>();
        keys(FrameKind.KINDS.with(kind.word()), "frame", out);
        return out;
    }

    private static void keys(KeyType.Group group, String path, Set<String> out) {
        for (Key<?> key : group.keys()) {
            if (key.type() instanceof KeyType.Group inner) {
                keys(inner, path + "." + key.name(), out);
            } else {
                out.add(path + "." + key.name());
            }
        }
    }

    private static Set<String> paths(String path, JsonNode node) {
        Set<String> out = new TreeSet<>();
        node.properties().forEach(each -> {
            String inner = path + "." + each.getKey();
            if (each.getValue().isObject()) {
                out.addAll(paths(inner, each.getValue()));
            } else {
                out.add(inner);
            }
        });
        return out;
    }

    @ParameterizedTest
    @EnumSource(FrameKind.class)
    void the_form_asks_for_each_of_its_keys_once(FrameKind kind) {
        List<String> asked = KeyPaths.asked(kind.word()).stream()
                .map(KeyPaths.At::path)
                .filter(path -> path.startsWith("frame."))
                .toList();
        assertThat(asked).containsExactlyInAnyOrderElementsOf(keys(kind));
    }

    @ParameterizedTest
    @EnumSource(FrameKind.class)
    void what_it_starts_from_can_be_read(FrameKind kind) throws IOException {
        for (UnitSystem units : UnitSystem.values()) {
            for (int count : new int[] {1, 2, 7, 400, 5000}) {
                ObjectNode root = (ObjectNode) tree(JOB.formatted("\"count\": " + count));
                root.put("units", units.symbol());
                ((ObjectNode) root.get("pattern").get("stock"))
                        .put("size", "40 mm")
                        .put("length", "160 mm");
                root.get("pattern").get("members").forEach(member -> millimetres((ObjectNode) member));
                root.set("frame", kind.start(count, units));
                Job.Read read = JobReader.read(root.toString());
                assertThat(read.problems()).isEmpty();
                assertThat(read.job().orElseThrow().frame().orElseThrow().kind())
                        .isEqualTo(kind);
            }
        }
    }

    private static void millimetres(ObjectNode member) {
        member.put("length", member.get("length").asText() + " mm")
                .put("diameter", member.get("diameter").asText() + " mm");
    }

    @ParameterizedTest
    @EnumSource(FrameKind.class)
    void every_piece_is_in_the_set_or_left_over(FrameKind kind) throws IOException {
        JsonNode json = tree(MatchJson.print(set(kind), List.of()));
        List<String> told = new ArrayList<>();
        for (String part : List.of("places", "groups", "spares")) {
            labels(json.path(part), told);
        }
        assertThat(told)
                .containsExactlyInAnyOrderElementsOf(
                        pieces().stream().map(Piece::label).toList());
        assertThat(json.get("spares")).hasSize(9 - frame(kind).pieces());
        assertThat(json.get("best_proven").isBoolean()).isTrue();
        assertThat(json.get("workings")).isNotEmpty();
    }

    private static void labels(JsonNode node, List<String> into) {
        if (node.isTextual()) {
            into.add(node.textValue());
        }
        node.forEach(each -> labels(each, into));
    }

    @ParameterizedTest
    @EnumSource(FrameKind.class)
    void too_few_pieces_are_refused_in_words(FrameKind kind) {
        assertThat(MatchJob.problems(job(sample(kind)), pieces().subList(0, 1))).isNotEmpty();
    }

    @ParameterizedTest
    @EnumSource(FrameKind.class)
    void the_words_name_every_piece(FrameKind kind) {
        String text = MatchSummary.text(set(kind));
        pieces().forEach(piece -> assertThat(text).contains(piece.label()));
        assertThat(text).contains(set(kind).verdict().sentences());
    }

    @ParameterizedTest
    @EnumSource(FrameKind.class)
    void it_is_drawn_and_has_a_record_to_print(FrameKind kind) {
        SetMatch set = set(kind);
        assertThat(SetSheets.drawings(set)).isNotEmpty();
        Set<String> placed = IntStream.rangeClosed(1, 9).mapToObj(i -> "p" + i).collect(Collectors.toSet());
        String drawn = SetPicture.of(set)
                .frame(job(sample(kind)).pattern(), Length.ofMm(200))
                .orElseThrow()
                .inline();
        assertThat(placed.stream().filter(label -> drawn.contains("piece " + label + ",")))
                .hasSize(frame(kind).pieces());
        Sheet record = SetSheets.record("Invented", "", set, job(sample(kind)).pattern(), Paper.A4);
        assertThat(record.pageCount()).isPositive();
    }

    /** The invented job with that frame, its pieces logged. */
    private static JobId kept(Served served, String frame) {
        JobText text = JobText.read(JOB.formatted("\"frame\": " + frame)).text().orElseThrow();
        List<Change> logged =
                pieces().stream().map(KeptPiece::of).map(Change::of).toList();
        JobId id = served.store().keep(text);
        served.store().edit(id, before -> new Edit("log invented pieces", logged));
        return id;
    }

    @ParameterizedTest
    @EnumSource(FrameKind.class)
    void its_page_shows_the_set(FrameKind kind, @TempDir Path folder) throws Exception {
        try (Served served = Served.in(folder)) {
            JobId id = kept(served, sample(kind));
            var page = served.get("/jobs/" + id.text() + "/match");
            assertThat(page.statusCode()).isEqualTo(200);
            pieces().forEach(piece -> assertThat(page.body()).contains(piece.label()));
            assertThat(page.body()).contains("The frame as it will look", "How it was found");
            String judged = set(kind).verdict().measure() + ": ";
            assertThat(page.body()).contains("<li>" + judged);
            assertThat(served.get("/jobs/" + id.text()).statusCode()).isEqualTo(200);
        }
    }

    @Test
    void where_a_frame_cannot_be_built_its_page_rings_the_place(@TempDir Path folder) throws Exception {
        try (Served served = Served.in(folder)) {
            JobId id = kept(served, "{\"kind\": \"wheel\", \"places\": 8, \"hub_radius\": 25}");
            String page = served.get("/jobs/" + id.text() + "/match").body();
            assertThat(page).contains("ringed where it cannot");
            assertThat(served.get("/jobs/" + id.text()).body())
                    .contains("class=\"touching\"")
                    .containsSubsequence("id=\"misfits\"", "cannot be built", "id=\"drawing\"");
            assertThat(served.get("/jobs/" + served.demo().text() + "/match").body())
                    .doesNotContain("ringed where it cannot");
        }
    }
}
