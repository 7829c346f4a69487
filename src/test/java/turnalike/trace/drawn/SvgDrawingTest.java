package turnalike.trace.drawn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.trace.Profile.Station;
import turnalike.units.UnitSystem;

/** What SVG files have beside plain outlines: styles, clones, symbols, stretched views, other shapes, and mistakes. */
class SvgDrawingTest {
    private static final String MM = "width=\"200mm\" height=\"100mm\" viewBox=\"0 0 200 100\"";
    /** Half of an invented spindle of two steps: radius 10 for 30, 6 for 70. */
    private static final String HALF = "M0 0 V10 H30 V6 H100 V0 Z";

    private static DrawnOutline.Read svg(String head, String body) {
        String text =
                "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" %s>%s</svg>"
                        .formatted(head, body);
        return DrawnOutline.read(text, DrawnOutline.Format.SVG, Optional.empty(), UnitSystem.METRIC);
    }

    private static void measures(DrawnOutline.Read read, double length, double radius) {
        assertThat(read.problems()).isEmpty();
        assertThat(read.original().orElseThrow().profile().length().mm()).isCloseTo(length, within(1e-6));
        assertThat(read.original().orElseThrow().profile().stations().stream()
                        .map(Station::radius)
                        .mapToDouble(each -> each.mm())
                        .max()
                        .orElseThrow())
                .isCloseTo(radius, within(1e-6));
    }

    private static void refused(DrawnOutline.Read read, String said) {
        assertThat(read.original()).isEmpty();
        assertThat(read.problems().get(0).line()).contains(said);
    }

    @Test
    void a_style_moves_as_an_attribute_does_and_comes_before_it() {
        String path = "<path %s d=\"" + HALF + "\"/>";
        measures(svg(MM, path.formatted("style=\"fill:none; transform: rotate(90deg) scale(2)\"")), 200, 20);
        measures(
                svg(MM, path.formatted("transform=\"scale(3)\" style=\"transform:scaleX(1.5) translateY(3px)\"")),
                150,
                10);
        measures(svg(MM, path.formatted("style=\"transform:rotate(0.25turn) translate(1mm, 2px)\"")), 100, 10);
        measures(svg(MM, path.formatted("style=\"transform:none\" transform=\"scale(3)\"")), 100, 10);
    }

    @Test
    void a_transform_that_is_not_read_is_refused_with_its_line() {
        for (String each : List.of(
                "transform=\"spin(3)\"",
                "transform=\"scale(2) rotate(a)\"",
                "transform=\"scale(1 2 3)\"",
                "style=\"transform:perspective(3px)\"",
                "transform=\"rotate(30)\" style=\"transform-origin:center\"")) {
            refused(svg(MM, "\n<path %s d=\"%s\"/>".formatted(each, HALF)), "line 2: has a transform that is not read");
        }
        measures(svg(MM, "<text transform=\"spin(3)\">a</text><path d=\"" + HALF + "\"/>"), 100, 10);
    }

    @Test
    void a_view_may_be_stretched_one_way() {
        String head = "width=\"400mm\" height=\"100mm\" viewBox=\"0 0 200 100\"";
        String path = "<path d=\"" + HALF + "\"/>";
        measures(svg(head, path), 100, 10);
        measures(svg(head + " preserveAspectRatio=\"none\"", path), 200, 10);
        measures(svg(head + " preserveAspectRatio=\"xMidYMid slice\"", path), 200, 20);
    }

    @Test
    void a_size_or_a_view_that_is_not_above_zero_is_refused() {
        String path = "<path d=\"" + HALF + "\"/>";
        refused(svg("width=\"200mm\" height=\"80mm\" viewBox=\"0 0 0 0\"", path), "not above zero");
        refused(svg("width=\"-200mm\" height=\"80mm\" viewBox=\"0 0 200 80\"", path), "not above zero");
        refused(svg("width=\"200mm\" height=\"80mm\" viewBox=\"0 0 a 80\"", path), "not above zero");
    }

    @Test
    void clones_and_symbols_are_drawn_where_they_are_put() {
        String defs = "<defs><g id=\"s\" transform=\"scale(2)\"><path d=\"" + HALF + "\"/></g></defs>";
        measures(svg(MM, defs + "<use href=\"#s\"/>"), 200, 20);
        measures(svg(MM, "<use xlink:href=\"#s\" x=\"5\" y=\"7\" transform=\"rotate(90)\"/>" + defs), 200, 20);
        String symbol = "<symbol id=\"s\" %s><path d=\"" + HALF + "\"/></symbol><use href=\"#s\" %s/>";
        measures(svg(MM, symbol.formatted("", "")), 100, 10);
        measures(svg(MM, symbol.formatted("viewBox=\"0 0 100 50\"", "width=\"50\" height=\"50\"")), 50, 5);
        refused(svg(MM, symbol.formatted("viewBox=\"0 0 100 50\"", "")), "a view box of its own and no size");
        measures(
                svg(
                        MM,
                        "<svg x=\"3\" width=\"50\" height=\"50\" viewBox=\"0 0 100 50\"><path d=\"" + HALF
                                + "\"/></svg>"),
                50,
                5);
        // Half of the outline is the clone's: it lies where x and y say.
        String lower = "<path id=\"a\" d=\"M0 0 V10 H30 V6 H100 V0\"/><use href=\"#a\" %s/>";
        measures(svg(MM, lower.formatted("transform=\"scale(1 -1)\"")), 100, 10);
        refused(svg(MM, lower.formatted("y=\"3\" transform=\"scale(1 -1)\"")), "no closed outline");
    }

    @Test
    void a_clone_of_itself_or_of_nothing_is_left_out_and_told() {
        String body = "<g id=\"a\"><path d=\"" + HALF + "\"/><use href=\"#a\"/><use href=\"other.svg#b\"/></g>";
        DrawnOutline.Read read = svg(MM, body);
        measures(read, 100, 10);
        assertThat(read.notes()).anyMatch(line -> line.startsWith("Line 1: the clone of '#a' was left out"));
        StringBuilder laughs = new StringBuilder("<defs><path id=\"l0\" d=\"M0 0h1\"/>");
        for (int i = 1; i <= 9; i++) {
            laughs.append("<g id=\"l%d\">%s</g>"
                    .formatted(i, "<use href=\"#l%d\"/>".formatted(i - 1).repeat(10)));
        }
        refused(svg(MM, laughs + "</defs><use href=\"#l9\"/>"), "draws more than 200000 elements");
    }

    @Test
    void round_shapes_and_rounded_corners_are_outlines() {
        measures(svg(MM, "<circle cx=\"50\" cy=\"50\" r=\"30\"/>"), 60, 30);
        measures(svg(MM, "<ellipse cx=\"50\" cy=\"50\" rx=\"40\" ry=\"15\"/>"), 80, 15);
        DrawnOutline.Read rounded = svg(MM, "<rect x=\"10\" y=\"20\" width=\"80\" height=\"20\" rx=\"4\"/>");
        measures(rounded, 80, 10);
        assertThat(rounded.original()
                        .orElseThrow()
                        .profile()
                        .stations()
                        .get(0)
                        .radius()
                        .mm())
                .isCloseTo(6, within(1e-6));
    }

    @Test
    void a_mistake_in_a_path_is_named() {
        String bad = "<path id=\"edge\" d=\"M0 0 V10 H30 V6 Hten V0 Z\"/>";
        refused(
                svg(MM, "\n\n" + bad),
                "Line 3: the path 'edge' was read only up to a mistake in it, at '0 0 V10 H30 V6 Hten V0");
        DrawnOutline.Read read = svg(MM, bad + "<path d=\"" + HALF + "\"/>");
        measures(read, 100, 10);
        assertThat(read.notes()).anyMatch(line -> line.contains("the path 'edge' was read only up to"));
    }

    @Test
    void entities_are_named_as_what_is_not_read() {
        String text = "<!DOCTYPE svg [<!ENTITY ns \"http://www.w3.org/2000/svg\">]>\n<svg xmlns=\"&ns;\"/>";
        refused(
                DrawnOutline.read(text, DrawnOutline.Format.SVG, Optional.empty(), UnitSystem.METRIC),
                "its document type defines (entities)");
    }

    /** The upper part hangs over the lower one from 40 to 45. */
    @Test
    void an_undercut_is_told() {
        DrawnOutline.Read read = svg(MM, "<path d=\"M0 0 V10 H45 L40 5 H100 V0 Z\"/>");
        assertThat(read.notes()).anyMatch(line -> line.contains("an undercut"));
        assertThat(svg(MM, "<path d=\"" + HALF + "\"/>").notes()).noneMatch(line -> line.contains("an undercut"));
    }

    @Test
    void what_is_narrower_than_any_member_is_left_out_and_told() {
        String notch = "M0 0 V20 H50 L50.05 1 L50.1 20 H90 V0 Z";
        String ridge = "M0 0 V5 H30 L30.05 10 L30.1 5 H60 V0 Z";
        for (String each : List.of(notch, ridge)) {
            DrawnOutline.Read read = svg(MM, "<path d=\"%s\"/>".formatted(each));
            assertThat(read.notes()).anyMatch(line -> line.contains("narrower than any member"));
            double level = each.equals(notch) ? 20 : 5;
            assertThat(read.original().orElseThrow().fitted().stations())
                    .allMatch(station -> Math.abs(station.radius().mm() - level) < 1e-6);
        }
        // A vee cut steeply is as narrow at its bottom, and meant.
        DrawnOutline.Read vee = svg(MM, "<path d=\"M0 0 V20 H50 L51 16 L52 20 H90 V0 Z\"/>");
        assertThat(vee.notes()).noneMatch(line -> line.contains("narrower than any member"));
    }
}
