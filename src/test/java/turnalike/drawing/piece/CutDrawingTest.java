package turnalike.drawing.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.drawing.svg.Drawn;
import turnalike.drawing.svg.Golden;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Svg;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.turning.Cut;
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

    /** Dividers set to 5 in are not drawn as one bar of 19. */
    @Test
    void each_step_of_the_dividers_has_its_own_bar_with_its_own_number() {
        Pattern spoke = Samples.spoke();
        List<Mark> marks = spoke.marks();
        int last = marks.size() - 1;
        List<Cut.Stride> strides = List.of(
                new Cut.Stride(marks.get(0).place(), marks.get(1).place()),
                new Cut.Stride(marks.get(last).place(), marks.get(last - 1).place()));
        Svg svg = drawing(spoke)
                .steps(
                        "dividers",
                        strides,
                        List.of(marks.get(1).place(), marks.get(last - 1).place()));
        Drawn.assertSound(svg);
        assertThat(level(svg)).hasSize(2).allSatisfy(length -> assertThat(length)
                .isLessThan(36));
        assertThat(Drawn.texts(new Group(0, 0, Map.of(), Optional.empty(), svg.shapes())))
                .containsExactlyInAnyOrder("0", "1", "" + last, "" + (last - 1));
    }

    /** Steps of neighbouring marks whose numbers find no room, and steps over one another: sound all the same. */
    @Test
    void every_step_of_every_sample_is_drawn_soundly() {
        for (Pattern pattern : DrawingsTest.PATTERNS) {
            List<Length> places = pattern.marks().stream().map(Mark::place).toList();
            List<Cut.Stride> all = new ArrayList<>();
            for (int i = 0; i + 1 < places.size(); i++) {
                all.add(new Cut.Stride(places.get(i), places.get(i + 1)));
                all.add(new Cut.Stride(places.get(i + 1), places.get(0)));
            }
            Drawn.assertSound(drawing(pattern).steps("dividers", all, places));
        }
    }

    private static List<Double> level(Svg svg) {
        return svg.shapes().stream()
                .filter(shape -> shape instanceof Path path
                        && path.pen() == Pen.ACCENT
                        && path.steps().size() == 2
                        && path.steps().get(0) instanceof Path.Move from
                        && path.steps().get(1) instanceof Path.Straight to
                        && from.yMm() == to.yMm())
                .map(shape -> {
                    Path path = (Path) shape;
                    return Math.abs(((Path.Move) path.steps().get(0)).xMm()
                            - ((Path.Straight) path.steps().get(1)).xMm());
                })
                .toList();
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
