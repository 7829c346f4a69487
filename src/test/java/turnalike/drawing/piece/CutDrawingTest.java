package turnalike.drawing.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.drawing.svg.Drawn;
import turnalike.drawing.svg.Golden;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Svg;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

class CutDrawingTest {
    private static CutDrawing drawing(Pattern pattern) {
        return new CutDrawing(pattern, Length.ofMm(78), Length.ofMm(14));
    }

    @Test
    void each_member_can_be_shown_and_no_number_covers_another_or_leaves_the_picture() {
        for (Pattern pattern : DrawingsTest.PATTERNS) {
            for (PlacedMember placed : pattern.placed()) {
                Svg svg = drawing(pattern)
                        .svg("a cut", List.of(placed.number() - 1), placed.start(), placed.end(), List.of());
                Drawn.assertSound(svg);
                assertThat(Drawn.groups(svg, "cut")).singleElement().satisfies(group -> assertThat(group.attributes())
                        .containsEntry("data-member", Integer.toString(placed.number())));
            }
        }
    }

    @Test
    void each_pair_of_marks_can_be_shown_and_each_place_has_its_line() {
        for (Pattern pattern : List.of(Samples.three(), Samples.spoke())) {
            List<Mark> marks = pattern.marks();
            for (int i = 0; i < marks.size(); i++) {
                for (int k = i; k < marks.size(); k++) {
                    Length from = marks.get(i).place();
                    Length to = marks.get(k).place();
                    Svg svg = drawing(pattern).svg("a step", List.of(), from, to, List.of(from, to));
                    Drawn.assertSound(svg);
                    assertThat(Drawn.groups(svg, "cut")).isEmpty();
                    assertThat(across(svg)).isGreaterThanOrEqualTo(2);
                }
            }
        }
    }

    /** Strokes in the accent that cross the whole body. */
    private static long across(Svg svg) {
        return svg.shapes().stream()
                .filter(shape -> shape instanceof Path path && path.pen() == Pen.ACCENT)
                .count();
    }

    @Test
    void the_picture_stays_as_it_was() {
        Pattern spoke = Samples.spoke();
        PlacedMember taper = spoke.placed().get(9);
        Golden.check(
                "drawing/cut-taper.svg",
                drawing(spoke)
                        .svg("10 long taper", List.of(9), taper.start(), taper.end(), List.of(taper.start()))
                        .file());
    }
}
