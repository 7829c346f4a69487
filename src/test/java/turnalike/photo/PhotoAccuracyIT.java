package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import turnalike.effort.Effort;
import turnalike.trace.Profile;
import turnalike.units.Length;

/**
 * Traces pictures that POV-Ray made of invented spindles, and writes {@code docs/photo-accuracy.md}. Not of the quick tests: {@code ./campaign
 * photos} runs it. It fails where a picture that is traced is traced worse than the table's own limit for its kind.
 */
@EnabledIfSystemProperty(named = "turnalike.photos", matches = "true")
class PhotoAccuracyIT {
    private static final Path PICTURES = Path.of("target/run/photos");

    private static final Path TABLE = Path.of("docs/photo-accuracy.md");

    private static final Map<String, PhotoTrace> TRACES = new HashMap<>();

    private record Row(String name, String what, boolean traced, double rms, int within, int seen) {}

    @Test
    void the_table_is_written_anew() throws IOException, InterruptedException {
        assertThat(Stream.of(System.getenv("PATH").split(":")).map(Path::of).map(folder -> folder.resolve("povray")))
                .as("POV-Ray makes the pictures: install Debian's package povray")
                .anyMatch(Files::isExecutable);
        List<Row> rows = new ArrayList<>();
        for (PhotoScene scene : PhotoScenes.all()) {
            rows.add(row(scene));
        }
        List<Row> others = new ArrayList<>();
        for (PhotoScene scene : FurtherPhotoScenes.all()) {
            others.add(row(scene));
        }
        StringBuilder text = new StringBuilder(HEAD);
        rows.forEach(row -> text.append(row.what()).append('\n'));
        text.append(HELD_OUT);
        others.forEach(row -> text.append(row.what()).append('\n'));
        rows.addAll(others);
        text.append(UNSEEN);
        Map<String, int[]> set = new TreeMap<>();
        for (PhotoScene scene : Stream.concat(PhotoScenes.all().stream(), FurtherPhotoScenes.all().stream())
                .toList()) {
            count(set, scene, rows);
        }
        Map<String, int[]> held = new TreeMap<>();
        for (PhotoScene scene : heldOut()) {
            Row row = row(scene);
            text.append(row.what()).append('\n');
            rows.add(row);
            count(held, scene, List.of(row));
        }
        text.append(WITHIN);
        set.forEach((ground, share) -> text.append("| %s | %s | %s |%n"
                .formatted(ground, percent(share), held.containsKey(ground) ? percent(held.get(ground)) : "none")));
        text.append(MEMBERS);
        List<Row> runs = new ArrayList<>(members(MemberPhotoScenes.set(), text, new int[6]));
        text.append(MEMBERS_FURTHER);
        int[] looked = new int[6];
        runs.addAll(members(MemberPhotoScenes.further(), text, looked));
        int[] told = new int[6];
        text.append(MEMBERS_HELD_OUT);
        runs.addAll(members(MemberPhotoScenes.heldOut(), text, told));
        text.append(SQUARES);
        for (SquarePhotoScenes.Asked asked : SquarePhotoScenes.all()) {
            text.append(squares(asked)).append('\n');
        }
        text.append(SHEET);
        List<Row> sheets = new ArrayList<>();
        for (SheetScene scene : SheetScene.all()) {
            sheets.add(row(scene));
        }
        sheets.forEach(row -> text.append(row.what()).append('\n'));
        Files.writeString(TABLE, text.toString());
        assertThat(sheets)
                .allSatisfy(row -> assertThat(row.traced()).as(row.name()).isTrue());
        rows.addAll(sheets);
        assertThat(rows)
                .filteredOn(Row::traced)
                .allSatisfy(row -> assertThat(row.rms()).as(row.name()).isLessThan(0.6));
        assertThat((double) looked[2] / looked[3])
                .as("members told of those seen")
                .isGreaterThan(0.9);
        // A third of these are of wood on wood, on black card or in low light.
        assertThat((double) told[2] / told[3])
                .as("members told of those seen, held out")
                .isGreaterThan(0.85);
        assertThat(runs)
                .filteredOn(row -> row.name().startsWith("713") || row.name().startsWith("717"))
                .allSatisfy(row -> assertThat(row.traced()).as(row.name()).isTrue());
        assertThat(runs)
                .filteredOn(Row::traced)
                .allSatisfy(row -> assertThat(row.rms()).as(row.name()).isLessThan(1));
        assertThat(held)
                .allSatisfy((ground, share) ->
                        assertThat((double) share[0] / share[1]).as(ground).isGreaterThan(0.5));
    }

    /** Rows of pictures whose members are known, and below them how many of those were told: of all, and of those seen from end to end. */
    private static List<Row> members(List<MemberPhotoScenes.Known> scenes, StringBuilder text, int[] sums)
            throws IOException, InterruptedException {
        List<Row> rows = new ArrayList<>();
        double squares = 0;
        int within = 0;
        int seen = 0;
        for (MemberPhotoScenes.Known known : scenes) {
            Row row = row(known.scene());
            rows.add(row);
            if (!row.traced()) {
                text.append(row.what()).append(" | | |\n");
                continue;
            }
            int[] here = MembersTold.of(known, PhotoRender.jpeg(known.scene(), PICTURES));
            for (int k = 0; k < sums.length; k++) {
                sums[k] += here[k];
            }
            squares += row.rms() * row.rms();
            within += row.within();
            seen += row.seen();
            text.append("%s %d of %d | %d of %d | %d, %d |%n"
                    .formatted(row.what(), here[0], here[1], here[2], here[3], here[4], here[5]));
        }
        text.append(String.format(
                Locale.ROOT,
                "| all that were traced | %.2f | | | %d %% | | | %d of %d | %d of %d | %d, %d |%n",
                Math.sqrt(squares / rows.stream().filter(Row::traced).count()),
                100 * within / seen,
                sums[0],
                sums[1],
                sums[2],
                sums[3],
                sums[4],
                sums[5]));
        return rows;
    }

    /** What was named square, which must be square: a wrong name fails. */
    private static String squares(SquarePhotoScenes.Asked asked) throws IOException, InterruptedException {
        Length length = Length.ofMm(asked.scene().shape().length());
        PhotoTrace trace =
                PhotoTrace.of(PhotoRender.jpeg(asked.scene(), PICTURES), PhotoWish.ofSpan(length), Effort.unlimited());
        if (!(trace instanceof PhotoTrace.Traced traced)) {
            return "| %s | %d | refused |"
                    .formatted(asked.scene().name(), asked.squares().size());
        }
        assertThat(traced.squares()).as(asked.scene().name()).allSatisfy(named -> assertThat(asked.squares())
                .anyMatch(each -> Math.abs(named.from().mm() - each[0]) < 2
                        && Math.abs(named.to().mm() - each[1]) < 2));
        return "| %s | %d | %d |"
                .formatted(
                        asked.scene().name(),
                        asked.squares().size(),
                        traced.squares().size());
    }

    private static List<PhotoScene> heldOut() {
        return Stream.concat(
                        UnseenPhotoScenes.all().stream(),
                        SquarePhotoScenes.all().stream()
                                .filter(asked -> asked.squares().isEmpty())
                                .map(SquarePhotoScenes.Asked::scene))
                .toList();
    }

    private static void count(Map<String, int[]> by, PhotoScene scene, List<Row> rows) {
        for (Row row : rows) {
            if (row.traced() && row.name().equals(scene.name())) {
                int[] share = by.computeIfAbsent(ground(scene), ground -> new int[2]);
                share[0] += row.within();
                share[1] += row.seen();
            }
        }
    }

    private static String ground(PhotoScene scene) {
        if (scene.light() < 0.2) {
            return "low light";
        }
        if (scene.ground().equals(PhotoScene.WHITE)) {
            return "burnt-out";
        }
        if (scene.extra().equals(PhotoScenes.CLUTTER)) {
            return "clutter";
        }
        return scene.ground().contains("normal") && !scene.name().contains("concrete") ? "cloth" : "plain";
    }

    private static String percent(int[] share) {
        return "%d %%".formatted(Math.round(100.0 * share[0] / share[1]));
    }

    private static PhotoTrace trace(RenderedScene scene, PhotoWish wish) throws IOException, InterruptedException {
        PhotoTrace known = TRACES.get(scene.name());
        PhotoTrace trace =
                known == null ? PhotoTrace.of(PhotoRender.jpeg(scene, PICTURES), wish, Effort.unlimited()) : known;
        TRACES.put(scene.name(), trace);
        return trace;
    }

    private static Row row(PhotoScene scene) throws IOException, InterruptedException {
        return row(
                scene, scene.shape(), PhotoWish.ofSpan(Length.ofMm(scene.shape().length())));
    }

    /** Without a length; with the bar's, and the height of a piece that does not lie. */
    private static Row row(SheetScene scene) throws IOException, InterruptedException {
        PhotoWish.OnSheet sheet = new PhotoWish.OnSheet(
                scene.printed() == 1 ? Optional.empty() : Optional.of(Length.ofMm(100 * scene.printed())),
                scene.lift() == 0 ? Optional.empty() : Optional.of(Length.ofMm(scene.axisMm())),
                Optional.empty());
        return row(
                scene,
                scene.piece().shape(),
                new PhotoWish(Optional.empty(), Optional.empty(), Optional.empty(), sheet));
    }

    private static Row row(RenderedScene scene, TurnedShape shape, PhotoWish wish)
            throws IOException, InterruptedException {
        PhotoTrace trace = trace(scene, wish);
        if (trace instanceof PhotoTrace.NotSure refusal) {
            return new Row(
                    scene.name(),
                    "| %s | refused: %s | | | | | |".formatted(scene.name(), refusal.what())
                            + (wish.span().isEmpty() ? " |" : ""),
                    false,
                    0,
                    0,
                    0);
        }
        PhotoTrace.Traced traced = (PhotoTrace.Traced) trace;
        double pixel = traced.mmPerPixel();
        double stretch = shape.length() / traced.profile().length().mm();
        List<Double> off = new ArrayList<>();
        int hidden = 0;
        int steep = 0;
        int within = 0;
        for (Profile.Station station : traced.profile().stations()) {
            double seen = station.place().mm();
            double place = seen * stretch;
            if (traced.profile().hidden().stream().anyMatch(s -> s.from().mm() <= seen && seen <= s.to().mm())) {
                hidden++;
            } else if (isSteep(shape, place, 0.6 * pixel)) {
                steep++;
            } else {
                double error = station.radius().mm() - shape.at(place);
                off.add(Math.abs(error) / pixel);
                within += Math.abs(error) <= station.uncertainty().mm() ? 1 : 0;
            }
        }
        Collections.sort(off);
        double rms = Math.sqrt(off.stream().mapToDouble(e -> e * e).average().orElse(0));
        int all = traced.profile().stations().size();
        return new Row(
                scene.name(),
                String.format(
                                Locale.ROOT,
                                "| %s | %.2f | %.2f | %.2f | %.0f %% | %.1f %% | %.1f %% |",
                                scene.name(),
                                rms,
                                off.get(off.size() / 2),
                                off.get(off.size() * 95 / 100),
                                100.0 * within / off.size(),
                                100.0 * hidden / all,
                                100.0 * steep / all)
                        + (wish.span().isEmpty()
                                ? String.format(Locale.ROOT, " %+.2f %% |", 100 * (1 / stretch - 1))
                                : ""),
                true,
                rms,
                within,
                off.size());
    }

    /** A shoulder, or an end: half a pixel along is more than a pixel across there. */
    private static boolean isSteep(TurnedShape shape, double place, double reach) {
        return place < reach
                || place > shape.length() - reach
                || Math.abs(shape.at(place + reach) - shape.at(place - reach)) > 2 * reach;
    }

    private static final String HEAD = """
            # How well a photograph is traced

            Written by `./campaign photos`: pictures of invented spindles that POV-Ray makes, 1200 by 900 pixels, some 900 of them along the
            piece, softened by a lens of 0.6 pixels, with noise of 1 of 255 (4 in low light), kept as JPEG with the focal length rounded to a whole
            millimetre in its data. Within a pixel light is added up, as on
            a sensor; as POV-Ray makes them of itself, adding up codes, edges stand up to a tenth of a pixel farther into what is brighter.
            The radius' error is in pixels of about 0.65 mm, at every half millimetre that the trace says it saw, but for
            shoulders and ends, where half a pixel along is more than one across (last column). What is hardly seen beside a step, and two pixels beside what is hidden, is said to be hidden too. "Within" is how much of it lies within the stated
            uncertainty, of which two thirds are meant; 0.15 pixels in it are for what cameras do to their pictures, which is not done to these, so that here more do.

            | picture | rms, px | median, px | 95 % below, px | within | said hidden | shoulders |
            | --- | ---: | ---: | ---: | ---: | ---: | ---: |
            """;

    private static final String UNSEEN = """

            Pictures that the stated uncertainty was not set by: its four figures were set on the two tables above and the first of the runs of members, then tried here.
            By how much light at the rim strays from what is expected, and what counts as a shoulder there, was set by the sum over all pictures of this page, those held out
            among them.
            What counts as hardly seen beside a step was set by the sum over all pictures as well.
            How much brighter a burnt-out ground is than can be written was set on all three such pictures, the post among them.

            | picture | rms, px | median, px | 95 % below, px | within | said hidden | shoulders |
            | --- | ---: | ---: | ---: | ---: | ---: | ---: |
            """;

    private static final String WITHIN = """

            By the kind of ground, how much lies within the stated uncertainty; 68 % are meant, of pictures as cameras write them. Single pictures lie from a third to nine in ten: what
            pulls both edges the same way, or turns the view that the ends tell, shows in no difference between the edges.

            | ground | where it was set | held out |
            | --- | ---: | ---: |
            """;

    private static final String MEMBERS = """

            Runs of members between two tenons, half of which are chamfered. The pieces are stouter, and the camera stands one and a half lengths away or, with a longer lens,
            two and a half, so that more hides behind what is thicker; a pixel is 0.25 to 0.5 mm. A member counts as told if its kind is right and each end within 1.5 mm; the
            last column but one is of those of which both ends and all but a seventh were seen. A name is wrong if less than half of what it covers is of that kind; curves claim
            none. Behind the comma stand those that are not marked as resting on what was not seen. Looked at while chamfered ends were mended and limits set:

            | picture | rms, px | median, px | 95 % below, px | within | said hidden | shoulders | members | of those seen | named wrongly |
            | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
            """;

    private static final String MEMBERS_FURTHER = """

            Further ones: held out when chamfered ends were mended, looked at since, when edges were weighed by how sure they are and hollow corners made sharp:

            | picture | rms, px | median, px | 95 % below, px | within | said hidden | shoulders | members | of those seen | named wrongly |
            | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
            """;

    private static final String MEMBERS_HELD_OUT = """

            The same, held out: first traced when that was done. The lean was then told by shoulders' rims too, which was tried on the others; when an end may go unasked was set with
            these in sight, 807 above all:

            | picture | rms, px | median, px | 95 % below, px | within | said hidden | shoulders | members | of those seen | named wrongly |
            | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
            """;

    private static final String SQUARES = """

            Squares. Posts with long cylinders, which must not be called square, and pieces with a true square at each end. The limits were looked for on
            some of them; a wrong name on any fails the run:

            | picture | squares | named |
            | --- | ---: | ---: |
            """;

    private static final String SHEET = """

            With the printed sheet and no length given: three pages in a row under the piece, or one beside it. Radii are compared at the place's share of the
            length, whose own error is the last column; 0.3 % is allowed. Bent lenses move the corners of the picture by 2 to 5 % of their distance from its
            middle.

            | picture | rms, px | median, px | 95 % below, px | within | said hidden | shoulders | length |
            | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
            """;

    private static final String HELD_OUT = """

            Other woods, grounds and poses. They were looked at while how the piece is found was mended, and some limits were set by them: they are
            further pictures, not unseen ones:

            | picture | rms, px | median, px | 95 % below, px | within | said hidden | shoulders |
            | --- | ---: | ---: | ---: | ---: | ---: | ---: |
            """;
}
