package turnalike.cli.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.cli.Ran;
import turnalike.photo.PhotoRender;
import turnalike.photo.SmallPicture;
import turnalike.photo.TurnedShape;
import turnalike.web.copy.Originals;

/** The photograph's way through the command, on a small picture made ray by ray of an invented piece: one pixel shows about a millimetre. */
class TracePhotoCommandTest {
    /** The invented pattern; the piece in the picture has its bead 2 mm low and its cove 1.5 mm shallow. */
    private static final String JOB = """
            {"format": "turnalike-job", "version": 1, "title": "Invented for a picture", "units": "mm", "count": 4,
             "pattern": {"name": "Picture piece", "stock": {"section": "square", "size": 60, "length": 420}, "members": [
               {"kind": "cylinder", "length": 40, "diameter": 40},
               {"kind": "bead", "name": "upper bead", "length": 24, "root": 40, "crown": 54},
               {"kind": "cove", "length": 40, "rim": 40, "bottom": 28},
               {"kind": "taper", "length": 130, "from": 40, "to": 52},
               {"kind": "ogee", "length": 60, "from": 52, "to": 30},
               {"kind": "bead", "name": "belly", "length": 70, "root": 30, "crown": 42},
               {"kind": "taper", "name": "foot", "length": 36, "from": 30, "to": 36}]},
             "wood": {"species": "White ash", "moisture_pct": 8},
             "checks": [{"name": "middle of the taper", "at": 170}, {"name": "behind the belly", "at": 366}]}
            """;

    private static final TurnedShape PIECE = Originals.spindle();

    /** A focal length of 500 pixels on a picture of 480 by 360, told as on film by its diagonal: 500/600 of 43.27 mm. */
    private static final int EQUIVALENT_MM = 36;

    @TempDir
    static Path folder;

    @BeforeAll
    static void takeThePicture() throws IOException {
        byte[] jpeg = PhotoRender.jpeg(SmallPicture.of(PIECE).image(), 0.95f);
        Files.write(folder.resolve("piece7.jpg"), PhotoRender.withFocal(jpeg, EQUIVALENT_MM, 1));
        Files.writeString(folder.resolve("picture.job.json"), JOB);
    }

    private static String picture() {
        return folder.resolve("piece7.jpg").toString();
    }

    private static JsonNode json(String... more) throws IOException {
        List<String> arguments = new ArrayList<>(List.of("trace", picture(), "--json"));
        arguments.addAll(List.of(more));
        Ran ran = Ran.here(arguments.toArray(String[]::new));
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        return new ObjectMapper().readTree(ran.out());
    }

    private static double mm(JsonNode node, String name) {
        return node.get(name).doubleValue();
    }

    @Test
    void the_json_of_a_photograph_has_every_name_and_its_outline_is_the_pieces() throws IOException {
        JsonNode found = json("--span", "400 mm");
        assertThat(found.get("source").textValue()).isEqualTo("photograph");
        assertThat(mm(found, "length_mm")).isEqualTo(400);
        JsonNode outline = found.get("outline");
        JsonNode uncertainty = found.get("uncertainty_mm");
        assertThat(uncertainty.size()).isEqualTo(outline.size());
        int within = 0;
        int seen = 0;
        for (int i = 0; i < outline.size(); i++) {
            double place = outline.get(i).get(0).doubleValue();
            double truth = PIECE.at(place);
            if (!isHidden(found, place) && place > 1 && place < 399) {
                double off = Math.abs(outline.get(i).get(1).doubleValue() - truth);
                within += off <= uncertainty.get(i).doubleValue() ? 1 : 0;
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(outline.size() * 7 / 10);
        // Of light from the camera, and shoulders count: PhotoAccuracyIT asks for the share that is meant.
        assertThat((double) within / seen).isGreaterThan(0.42);
        assertThat(mm(found.get("scale"), "mm_per_px")).isBetween(0.95, 1.05);
        assertThat(found.get("scale").get("from").textValue()).contains("length that was given");
        assertThat(found.get("members").size())
                .isEqualTo(found.get("member_fits").size());
        assertThat(found.toString()).contains("is taken to be round: measure what may be a square");
        assertThat(found.has("against")).isFalse();
    }

    private static boolean isHidden(JsonNode found, double place) {
        for (JsonNode gap : found.get("hidden")) {
            if (gap.get(0).doubleValue() < place && place < gap.get(1).doubleValue()) {
                return true;
            }
        }
        return false;
    }

    @Test
    void people_are_told_the_members_and_where_nothing_was_seen() {
        Path out = folder.resolve("copy");
        Ran ran = Ran.here("trace", picture(), "--span", "400 mm", "--out", out.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains("piece7.jpg: a photograph of a piece 400 mm (15 3/4 in) long")
                .contains("Not seen behind thicker parts: ")
                .contains("Angle of view: ")
                .contains("piece7.job.json");
        assertThat(out.resolve("piece7.trace.svg")).exists();
    }

    @Test
    void a_bead_that_stands_low_is_told_from_the_photograph_and_nothing_that_it_did_not_see() throws IOException {
        JsonNode found = json("--against", folder.resolve("picture.job.json").toString());
        JsonNode against = found.get("against");
        JsonNode bead = against.get("members").get(1);
        assertThat(mm(bead, "place_off_mm")).isCloseTo(-2, within(3 * mm(bead, "place_off_uncertainty_mm")));
        assertThat(mm(bead, "place_off_uncertainty_mm")).isLessThan(0.6);
        assertThat(against.get("words").toString())
                .contains("Its upper bead stands ")
                .contains(" mm low");
        JsonNode cove = against.get("members").get(2);
        assertThat(mm(cove, "diameter_off_mm")).isCloseTo(3, within(0.6));
        for (JsonNode off : against.get("deviation")) {
            assertThat(isHidden(found, off.get(0).doubleValue())).isFalse();
        }
        // Without a length given none is judged, and none is kept.
        assertThat(against.get("notes").toString()).contains("was not judged");
        for (JsonNode measure : against.get("measures")) {
            if (measure.get("column").textValue().equals("length")) {
                assertThat(measure.get("found_mm").isNull()).isTrue();
            }
            if (measure.get("column").textValue().equals("d1")) {
                assertThat(mm(measure, "off_mm")).isCloseTo(0, within(3 * mm(measure, "off_uncertainty_mm")));
            }
        }
    }

    @Test
    void what_the_log_keeps_of_a_photograph_says_that_it_is_from_one() throws IOException {
        String store = folder.resolve("shop.db").toString();
        Ran kept = Ran.here("keep", folder.resolve("picture.job.json").toString(), "--store", store, "--json");
        String id = new ObjectMapper().readTree(kept.out()).get("job").textValue();
        Ran logged = Ran.here("trace", picture(), "--against", id, "--store", store, "--log", "7");
        assertThat(logged.err()).isEmpty();
        String given = Ran.here("give", id, "--store", store).out();
        assertThat(given).contains("piece7.jpg");
        assertThat(Ran.here("undo", id, "--store", store).code()).isZero();
        assertThat(Ran.here("give", id, "--store", store, "--pieces").out()).doesNotContainPattern("(?m)^7,");
    }
}
