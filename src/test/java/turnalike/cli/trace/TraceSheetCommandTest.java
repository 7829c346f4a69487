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
import turnalike.photo.SheetPicture;
import turnalike.photo.TurnedShape;

/** The printed sheet's way through the command: printed, then under an invented piece in a small picture made ray by ray. */
class TraceSheetCommandTest {
    private static final double LENGTH_MM = 200;

    /** It would rest on its two beads; blocks hold it so much higher. */
    private static final double BEAD_MM = 22;

    private static final double HELD_MM = 40;

    /** Both pages came out small by this. */
    private static final double PRINTED = 0.97;

    /** A focal length of 640 pixels on a picture of 640 by 480, told as on film: 36 mm by its width, 34.6 by its diagonal. */
    private static final int EQUIVALENT_MM = 35;

    @TempDir
    static Path folder;

    @BeforeAll
    static void takeThePicture() throws IOException {
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {0, 15});
        double at = TurnedShape.straight(points, 0, 20, 15, 15);
        at = TurnedShape.ellipse(points, at, 20, 15, BEAD_MM);
        at = TurnedShape.straight(points, at, 120, 15, 12);
        points.add(new double[] {at, 15});
        at = TurnedShape.ellipse(points, at, 20, 15, BEAD_MM);
        TurnedShape.straight(points, at, LENGTH_MM - at, 15, 13);
        SheetPicture picture = SheetPicture.of(TurnedShape.of(points))
                .lifted(HELD_MM)
                .printedAt(PRINTED)
                .leaning(-4, 7);
        byte[] jpeg = PhotoRender.jpeg(picture.image(), 0.95f);
        Files.write(folder.resolve("held.jpg"), PhotoRender.withFocal(jpeg, EQUIVALENT_MM, 1));
    }

    private static Ran trace(String... more) {
        List<String> arguments =
                new ArrayList<>(List.of("trace", folder.resolve("held.jpg").toString()));
        arguments.addAll(List.of(more));
        return Ran.here(arguments.toArray(String[]::new));
    }

    private static double length(String... more) throws IOException {
        List<String> arguments = new ArrayList<>(List.of(more));
        arguments.add("--json");
        Ran ran = trace(arguments.toArray(String[]::new));
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        JsonNode found = new ObjectMapper().readTree(ran.out());
        assertThat(found.get("scale").get("from").textValue()).startsWith("the printed sheet: ");
        return found.get("length_mm").doubleValue();
    }

    @Test
    void with_its_bar_and_its_height_a_piece_held_above_a_small_print_needs_no_length() throws IOException {
        String height = (BEAD_MM + HELD_MM) + " mm";
        assertThat(length("--bar", "97 mm", "--height", height)).isCloseTo(LENGTH_MM, within(0.006 * LENGTH_MM));
        // Each of both counts: what the sheet does not know, it cannot say.
        assertThat(length("--height", height)).isGreaterThan(1.02 * LENGTH_MM);
        assertThat(length("--bar", "97 mm")).isGreaterThan(1.05 * LENGTH_MM);
    }

    @Test
    void a_length_that_contradicts_the_sheet_is_refused_with_what_to_do() {
        Ran ran = trace("--span", "230 mm", "--bar", "97 mm", "--height", (BEAD_MM + HELD_MM) + " mm");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains("held.jpg")
                .contains("by the sheet it is")
                .contains("--bar")
                .contains("--height");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void the_sheet_is_written_as_pages_to_print() {
        Path out = folder.resolve("sheet");
        Ran ran = Ran.here("trace", "--sheet", "--pages", "2", "--paper", "a4", "--out", out.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(out).isDirectoryContaining("glob:**.pdf");
    }

    @Test
    void options_of_the_sheet_that_cannot_be_meant_are_told_by_name() {
        told(trace("--bar", "3 mm"), "--bar", "for a bar of 100 mm");
        told(trace("--height", "high"), "--height", "");
        told(trace("--pages", "2", "--span", "200 mm"), "--pages", "goes with --sheet");
        told(Ran.here("trace", "--sheet"), "--sheet", "--out");
        told(Ran.here("trace", "--sheet", "--pages", "0", "--out", folder.toString()), "--pages", "1 to 20");
        told(trace("--sheet", "--out", folder.toString()), "--sheet", "held.jpg");
    }

    private static void told(Ran ran, String option, String said) {
        assertThat(ran.code()).as(option).isEqualTo(2);
        assertThat(ran.err()).contains(option).contains(said).doesNotContain("Exception");
        assertThat(ran.out()).isEmpty();
    }
}
