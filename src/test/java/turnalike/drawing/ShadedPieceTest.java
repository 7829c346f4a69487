package turnalike.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.outline.Outline;
import turnalike.pattern.Bead;
import turnalike.pattern.Details;
import turnalike.pattern.Member;
import turnalike.pattern.Square;
import turnalike.units.Length;

class ShadedPieceTest {
    private static Svg shaded(Member member) {
        Outline outline = Outline.of(Length.ZERO, member.curves(new Member.Ends(true, true)), member.section());
        return ShadedPiece.svg(outline, "<bead>", Length.ofMm(120), Length.ofMm(60));
    }

    private static List<Tint> tints(Svg svg) {
        return svg.shapes().stream()
                .filter(Tint.class::isInstance)
                .map(Tint.class::cast)
                .toList();
    }

    @Test
    void a_round_body_is_brightest_where_it_faces_the_lamp_and_darkest_below() {
        Svg svg = shaded(new Bead(Length.ofMm(40), Length.ofMm(20), Length.ofMm(30), Details.NONE));
        List<Integer> reds = tints(svg).stream().map(Tint::red).toList();
        int brightest = reds.indexOf(reds.stream().max(Integer::compare).orElseThrow());
        assertThat(brightest).isBetween(1, reds.size() / 3);
        assertThat(reds.get(reds.size() - 1))
                .isEqualTo(reds.stream().min(Integer::compare).orElseThrow());
        assertThat(svg.inline()).contains("&lt;bead&gt;").doesNotContain("<bead>");
    }

    @Test
    void a_square_section_is_one_flat_face() {
        Svg svg = shaded(new Square(Length.ofMm(40), Length.ofMm(30), Details.NONE));
        assertThat(tints(svg)).hasSize(1);
    }

    @Test
    void the_body_fits_the_room_it_is_given() {
        Svg svg = shaded(new Bead(Length.ofMm(40), Length.ofMm(20), Length.ofMm(30), Details.NONE));
        assertThat(svg.width().mm()).isEqualTo(120);
        assertThat(svg.height().mm()).isLessThanOrEqualTo(60 + 1e-9);
    }
}
