package turnalike.drawing.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.drawing.gauge.CheckBars;
import turnalike.drawing.gauge.MarkingStick;
import turnalike.drawing.gauge.ProfileTemplate;
import turnalike.drawing.gauge.SettingBars;
import turnalike.drawing.svg.DrawingScale;
import turnalike.drawing.svg.Golden;
import turnalike.drawing.svg.LengthLabels;
import turnalike.drawing.svg.Lettered;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.SvgNumbers;
import turnalike.drawing.svg.TextWrap;
import turnalike.pattern.Pattern;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

public class DrawingsTest {
    public static final List<Pattern> PATTERNS = List.of(
            Samples.three(),
            Samples.spoke(),
            Samples.forty(150),
            Samples.forty(700),
            Samples.forty(1900),
            Samples.newel());

    private static List<Svg> all() {
        List<Svg> out = new ArrayList<>();
        for (Pattern pattern : PATTERNS) {
            for (UnitSystem units : UnitSystem.values()) {
                out.add(SpindleDrawing.toScale(pattern, units, Length.ofMm(186), Length.ofMm(55))
                        .svg());
                out.add(SpindleDrawing.filling(pattern, units, Length.ofMm(300), Length.ofMm(90))
                        .svg());
                out.add(MarkingStick.of(pattern, units).svg());
                out.add(MarkingStick.of(pattern, units, MarkingStick.Edge.NOTCHES)
                        .svg());
                out.add(ProfileTemplate.of(pattern, units).svg());
            }
        }
        out.add(CheckBars.svg());
        out.add(SettingBars.svg(
                "bars",
                List.of(
                        new SettingBars.Bar(Length.ofMm(300), "0 → 1"),
                        new SettingBars.Bar(Length.ofMm(80), "1 → 2"),
                        new SettingBars.Bar(Length.ofMm(20), "2 → 3, 3 → 4"),
                        new SettingBars.Bar(Length.ofMm(2), "5 → 6, ".repeat(40))),
                UnitSystem.METRIC,
                Length.ofMm(186)));
        return out;
    }

    @Test
    void drawings_stay_as_they_were() {
        Golden.check(
                "drawing/spoke-in.svg",
                SpindleDrawing.toScale(Samples.spoke(), UnitSystem.INCH, Length.ofMm(186), Length.ofMm(55))
                        .svg()
                        .file());
        Golden.check(
                "drawing/spoke-stick-mm.svg",
                MarkingStick.of(Samples.spoke(), UnitSystem.METRIC).svg().file());
        Golden.check(
                "drawing/spoke-template-mm.svg",
                ProfileTemplate.of(Samples.spoke(), UnitSystem.METRIC).svg().file());
        Golden.check("drawing/check-bars.svg", CheckBars.svg().file());
    }

    @Test
    void no_lettering_covers_other_lettering_or_leaves_the_picture() {
        for (Svg svg : all()) {
            List<Lettered.Box> boxes = Lettered.boxes(svg);
            assertThat(boxes).isNotEmpty();
            for (Lettered.Box box : boxes) {
                assertThat(box.left()).as("%s in %s", box.text(), svg.title()).isGreaterThanOrEqualTo(-0.01);
                assertThat(box.top()).as("%s in %s", box.text(), svg.title()).isGreaterThanOrEqualTo(-0.01);
                assertThat(box.right())
                        .as("%s in %s", box.text(), svg.title())
                        .isLessThanOrEqualTo(svg.width().mm() + 0.01);
                assertThat(box.bottom())
                        .as("%s in %s", box.text(), svg.title())
                        .isLessThanOrEqualTo(svg.height().mm() + 0.01);
            }
            assertThat(Lettered.overlaps(boxes)).as(svg.title()).isEmpty();
        }
    }

    @Test
    void every_mark_and_every_diameter_is_lettered() {
        Pattern pattern = Samples.spoke();
        String svg = SpindleDrawing.toScale(pattern, UnitSystem.INCH, Length.ofMm(186), Length.ofMm(55))
                .svg()
                .file();
        for (int i = 0; i < pattern.marks().size(); i++) {
            assertThat(svg).contains("data-mark=\"" + i + "\"").contains(">" + i + "</text>");
            assertThat(svg)
                    .contains(">" + LengthLabels.bare(pattern.marks().get(i).place(), UnitSystem.INCH) + "</text>");
        }
        for (var placed : pattern.placed()) {
            assertThat(svg).contains("data-member=\"" + placed.number() + "\"");
            for (var diameter : placed.member().diameters()) {
                assertThat(svg).contains(">" + LengthLabels.bare(diameter.size(), UnitSystem.INCH) + "</text>");
            }
        }
    }

    @Test
    void stick_carries_the_other_unit_in_reach_and_its_marks_at_true_places() {
        MarkingStick stick = MarkingStick.of(Samples.spoke(), UnitSystem.INCH);
        String svg = stick.svg().file();
        assertThat(svg).contains("<title>mark 12: 9 ogee | 10 long taper, 6 13/16 in (173 mm)</title>");
        double x = stick.datum().mm() + 0.75 * 25.4;
        assertThat(svg).contains("d=\"M%s 2L%s 16\"".formatted(SvgNumbers.mm(x), SvgNumbers.mm(x)));
    }

    @Test
    void labels_keep_their_order_and_distance_however_crowded() {
        for (long seed = 1; seed <= 40; seed++) {
            Random random = new Random(seed);
            int n = 1 + random.nextInt(80);
            List<LeaderLabels.Flag> flags = new ArrayList<>();
            for (double at : random.doubles(n, 0, 180).sorted().toArray()) {
                flags.add(new LeaderLabels.Flag(at, "" + flags.size(), "7 63/64", "", java.util.Map.of()));
            }
            LeaderLabels laid = LeaderLabels.between(0, 180, flags);
            Svg svg = new Svg(Length.ofMm(180), Length.ofMm(laid.depthMm() + 5), "seed " + seed, laid.below(2));
            assertThat(Lettered.overlaps(Lettered.boxes(svg)))
                    .as("seed %d, %d labels", seed, n)
                    .isEmpty();
            assertThat(Lettered.boxes(svg)).hasSize(2 * n);
            assertThat(Lettered.crossed(svg)).as("seed %d, %d labels", seed, n).isEmpty();
        }
    }

    @Test
    void scales_are_those_a_person_would_choose() {
        assertThat(DrawingScale.tidy(1.7).text()).isEqualTo("1 : 1 (full size)");
        assertThat(DrawingScale.tidy(0.45).text()).isEqualTo("1 : 2.5");
        assertThat(DrawingScale.tidy(0.4).paperOverWood()).isCloseTo(0.4, within(1e-12));
        assertThat(DrawingScale.of(2.5).text()).isEqualTo("2.5 : 1");
        assertThat(DrawingScale.of(0.3).text()).isEqualTo("1 : 3.33");
    }

    @Test
    void text_is_broken_between_words_and_cut_with_dots() {
        List<String> lines =
                TextWrap.wrap("one two three four five", Lettering.BODY, Lettering.BODY.widthMm("one two three"));
        assertThat(lines).containsExactly("one two three", "four five");
        assertThat(String.join("", TextWrap.wrap("w".repeat(200), Lettering.BODY, 50)))
                .isEqualTo("w".repeat(200));
        assertThat(TextWrap.wrap("", Lettering.BODY, 50)).containsExactly("");
        String cut = TextWrap.cut("a very long name for a member", Lettering.BODY, 30);
        assertThat(cut).endsWith("…");
        assertThat(Lettering.BODY.widthMm(cut)).isLessThanOrEqualTo(30);
    }
}
