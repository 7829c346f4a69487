package turnalike.web.copy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.original.OriginalTrace;
import turnalike.job.original.OriginalWish;
import turnalike.language.Language;
import turnalike.photo.SmallPicture;
import turnalike.photo.TurnedShape;
import turnalike.trace.Doubt;
import turnalike.trace.DoubtWarnings;
import turnalike.trace.Original;
import turnalike.trace.Profile;
import turnalike.trace.Snap;
import turnalike.trace.TraceWarnings;
import turnalike.trace.Traced;
import turnalike.trace.TracedRun;
import turnalike.trace.drawn.DrawnOutline;
import turnalike.trace.table.PointTable;
import turnalike.units.Length;
import turnalike.units.SentenceCase;
import turnalike.units.UnitSystem;

/** What stands beside a traced original, to be known before relying on it, in German too. */
class TraceNotesInGermanTest {
    private static final TurnedShape STEPPED = TurnedShape.of(List.of(
            new double[] {0, 16},
            new double[] {90, 16},
            new double[] {90, 26},
            new double[] {160, 24},
            new double[] {160, 13},
            new double[] {250, 15},
            new double[] {250, 22},
            new double[] {300, 22}));

    private static Set<String> missing(List<String> notes) {
        Set<String> missing = new TreeSet<>();
        for (String note : notes) {
            String shown = SentenceCase.sentence(OptionWords.of(note));
            if (!Language.GERMAN.knows(shown)) {
                missing.add(shown);
            }
        }
        return missing;
    }

    private static OriginalWish wish(Optional<Length> span) {
        return OriginalWish.of(UnitSystem.METRIC, span, Optional.empty(), Snap.NONE);
    }

    @Test
    void of_a_photograph() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(SmallPicture.of(STEPPED).image(), "png", bytes);
        List<String> notes = OriginalTrace.photograph(
                        bytes.toByteArray(), wish(Optional.of(Length.ofMm(STEPPED.length()))), Effort.unlimited())
                .traced()
                .orElseThrow()
                .warnings();
        assertThat(notes).hasSizeGreaterThan(3);
        assertThat(missing(notes)).isEmpty();
    }

    /** However many places there are. */
    @Test
    void of_all_that_thicker_parts_hide() {
        Traced traced = OriginalTrace.table(
                        "x,diameter\n0,20\n20,20\n20,30\n60,36\n60,20\n80,20\n", wish(Optional.empty()))
                .traced()
                .orElseThrow();
        Profile seen = traced.original().profile();
        List<Profile.Stretch> hidden = IntStream.range(0, 10)
                .mapToObj(k -> new Profile.Stretch(Length.ofMm(7.5 * k + 0.5), Length.ofMm(7.5 * k + 3)))
                .toList();
        Original original =
                new Original(new Profile(seen.length(), seen.stations(), hidden), List.of(), Length.ofMm(0.1));
        for (UnitSystem units : UnitSystem.values()) {
            List<String> notes = TraceWarnings.of(original, traced.run(), units);
            assertThat(notes).anyMatch(note -> note.startsWith("Not seen behind thicker parts: "));
            assertThat(missing(notes)).isEmpty();
        }
    }

    @Test
    void of_a_table_with_a_slip() {
        StringBuilder table = new StringBuilder("x,diameter\n");
        for (int k = 0; k <= 30; k++) {
            table.append(2 * k).append(',').append(k == 17 ? 31 : 20 + 0.1 * k).append('\n');
        }
        List<String> notes = OriginalTrace.table(table.toString(), wish(Optional.empty()))
                .traced()
                .orElseThrow()
                .warnings();
        assertThat(notes).isNotEmpty();
        assertThat(missing(notes)).isEmpty();
    }

    @Test
    void of_rows_that_were_likely_mistyped() {
        String table = "x,diameter\n0,200\n2,20\n2,20\n5,20\n8,50\n11,20\n150,20\n";
        List<String> notes =
                PointTable.read(table, UnitSystem.METRIC, Length.ofMm(0.2)).notes();
        assertThat(notes).hasSize(4);
        assertThat(missing(notes)).isEmpty();
    }

    @Test
    void of_members_that_the_rows_do_not_bear_out() {
        TracedRun run = OriginalTrace.table(
                        "x,diameter\n0,20\n20,20\n20,30\n60,36\n60,20\n80,20\n", wish(Optional.empty()))
                .traced()
                .orElseThrow()
                .run();
        Doubt.Rival rival = new Doubt.Rival("vee", 3, Length.ofMm(41.2));
        List<String> notes = new ArrayList<>();
        for (List<Integer> members : List.of(List.of(2), List.of(1, 2, 3))) {
            List<Doubt> doubts = new ArrayList<>();
            for (int member : members) {
                doubts.add(new Doubt(member, Doubt.Why.RIVAL, Optional.of(rival)));
                doubts.add(new Doubt(member, Doubt.Why.FEW, Optional.empty()));
                doubts.add(new Doubt(member, Doubt.Why.ENDS, Optional.empty()));
            }
            notes.addAll(DoubtWarnings.of(doubts, run, UnitSystem.METRIC));
        }
        notes.addAll(DoubtWarnings.of(
                List.of(new Doubt(2, Doubt.Why.RIVAL, Optional.of(new Doubt.Rival("cove", 1, Length.ofMm(3))))),
                run,
                UnitSystem.INCH));
        notes.addAll(straying());
        assertThat(notes).hasSizeGreaterThan(9).anyMatch(note -> note.startsWith("The rows stray"));
        assertThat(missing(notes)).isEmpty();
    }

    /** Rows half a millimetre off, to and fro. */
    private static List<String> straying() {
        StringBuilder table = new StringBuilder("x,diameter\n");
        double[] off = {0.5, -0.3, -0.6, 0.4, 0.1, -0.5, 0.6, -0.2};
        for (int k = 0; k < 32; k++) {
            table.append(3 * k + k % 3)
                    .append(',')
                    .append(k < 16 ? 20 + off[k % 8] : 40 + off[k % 8])
                    .append('\n');
        }
        return OriginalTrace.table(table.toString(), wish(Optional.empty()))
                .traced()
                .orElseThrow()
                .warnings();
    }

    @Test
    void of_drawings() {
        OriginalWish wish = OriginalWish.of(UnitSystem.METRIC, Optional.empty(), Optional.empty(), Snap.NONE);
        String head = "<svg width='200mm' height='100mm' viewBox='0 0 200 100'>";
        StringBuilder shaky = new StringBuilder("M0 0 ");
        for (int i = 0; i <= 60; i++) {
            shaky.append("L").append(i).append(' ').append(i % 2 == 0 ? 9 : 10).append(' ');
        }
        for (String body : List.of(
                "<rect x='-9' y='-9' width='90' height='60'/><path id='p' d='M0 0 h1 q'/><path d='M0 0 V10 H45 L40 5 H60 V0 Z'/><use href='#no'/>",
                "<path d='M0 0 V10 H30 L30.05 20 L30.1 10 H60 V0 Z'/><path d='M0 0 h1 q'/>",
                "<path d='M0 10 H30 V6 H100 V-6 H30 V-10.5 H0 Z'/><path d='M0 0 h1 m3 3 h1'/>",
                "<path d='" + shaky + "L60 0 Z'/>")) {
            List<String> notes = OriginalTrace.drawing(head + body + "</svg>", DrawnOutline.Format.SVG, wish)
                    .traced()
                    .orElseThrow()
                    .warnings();
            assertThat(notes).hasSizeGreaterThan(1);
            assertThat(missing(notes)).as(body).isEmpty();
        }
    }

    /** Such as come of awkward originals only. */
    @Test
    void of_what_is_not_sure() {
        assertThat(missing(List.of(
                        "Nothing was read that tells the size “from” of member 2 (half-cove): it is carried on from farther off; measure it on the piece.",
                        "Member 4 rests on what was not seen: measure it on the piece.",
                        "Member 4 may as well be of another kind, for all that the picture shows: measure there.",
                        "Members 4 and 6 may as well be of another kind, for all that the picture shows: measure there.",
                        "From 0 to 96 mm it is lit as a flat that faces the camera, and taken for a square of 44.2 mm, its ends known to 0.6 mm if its shoulders are cut square; the corners of a rounded or sloping one end sooner than is seen: measure it.",
                        "From 0 to 91 mm it is lit as two flats with an arris between, and taken for a square of 44.4 mm, its ends known to 0.6 mm if its shoulders are cut square; the corners of a rounded or sloping one end sooner than is seen: measure it.",
                        "From 8 to 90 mm it may be square, lit somewhat as two flats with an arris between; not sure, so it is taken for a round: if it is square, its side is some 44.0 mm.",
                        "one edge is hardly told from the ground over 56 per cent of the length: there the radii rest on the other edge",
                        "Angle of view: the camera's data: as a lens of 39 mm on film, and the sheet's squares.")))
                .isEmpty();
    }
}
