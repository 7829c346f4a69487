package turnalike.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.outline.Curve;
import turnalike.outline.EllipseArc;
import turnalike.outline.Line;
import turnalike.outline.MonotoneCubic;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.pattern.Samples;
import turnalike.units.Density;
import turnalike.units.Length;

class MeshTest {
    private static final Density ANY = Density.ofKgPerM3(700);

    @Test
    void every_kind_of_member_gives_a_closed_skin_of_the_exact_volume() {
        Seeds.each(5, random -> check("pattern", Samples.pattern(7, random).outline()));
    }

    @Test
    void a_cone_comes_to_a_point_at_either_end() {
        Outline cone = round(Line.level(mm(30), mm(10)), new Line(mm(20), mm(10), mm(0)));
        Mesh mesh = check("cone", cone);
        assertThat(mesh.corners().stream().filter(corner -> corner.zMm() == 50)).hasSize(1);
        check("turned round", cone.reversed());
    }

    @Test
    void a_bead_may_run_out_to_nothing_upright() {
        check("ball", round(new EllipseArc(mm(20), mm(10), mm(10), mm(0), mm(10))));
    }

    @Test
    void two_cones_that_meet_in_a_point_are_closed_each() {
        Mesh mesh = check("waist", round(new Line(mm(20), mm(10), mm(0)), new Line(mm(20), mm(0), mm(8))));
        assertThat(mesh.corners().stream().filter(corner -> corner.zMm() == 20)).hasSize(2);
    }

    @Test
    void shoulders_are_flat_rings() {
        Mesh mesh = check(
                "shoulders",
                round(Line.level(mm(10), mm(20)), Line.level(mm(5), mm(8)), Line.level(mm(5), mm(8.0000001))));
        assertThat(mesh.corners().stream().filter(corner -> corner.zMm() == 10)).hasSize(2 * 128);
        assertThat(mesh.corners().stream().mapToDouble(Mesh.Corner::zMm).max()).hasValue(20);
    }

    @Test
    void a_round_within_across_and_just_touching_a_square_is_closed() {
        for (double radius : new double[] {3, 9.99, 10, 10.001, 10.01, 12, 14.1, 14.1421, 15, 40}) {
            Outline outline = Outline.join(List.of(
                    Outline.of(mm(0), List.of(Line.level(mm(10), mm(10))), Section.SQUARE),
                    Outline.of(mm(10), List.of(Line.level(mm(7), mm(radius))), Section.ROUND),
                    Outline.of(mm(17), List.of(Line.level(mm(10), mm(10))), Section.SQUARE)));
            check("radius " + radius, outline);
        }
    }

    @Test
    void squares_have_their_flats_and_arrises_where_they_are() {
        Mesh mesh = check("square", Outline.of(mm(0), List.of(Line.level(mm(10), mm(7))), Section.SQUARE));
        assertThat(mesh.corners().stream().mapToDouble(Mesh.Corner::xMm).max().orElse(0))
                .isCloseTo(7, within(1e-12));
        assertThat(mesh.corners().stream()
                        .filter(corner -> Math.abs(corner.xMm() - 7) < 1e-9 && Math.abs(corner.yMm() - 7) < 1e-9))
                .hasSize(2);
    }

    @Test
    void tiny_and_long_pieces_are_as_true() {
        Outline usual = round(
                Line.level(mm(12), mm(9)),
                new EllipseArc(mm(20), mm(10), mm(10), mm(9), mm(6)),
                new Line(mm(40), mm(9), mm(4)));
        for (double factor : new double[] {0.01, 1, 250}) {
            check(
                    "times " + factor,
                    round(
                            Line.level(mm(12 * factor), mm(9 * factor)),
                            new EllipseArc(
                                    mm(20 * factor), mm(10 * factor), mm(10 * factor), mm(9 * factor), mm(6 * factor)),
                            new Line(mm(40 * factor), mm(9 * factor), mm(4 * factor))));
        }
        assertThat(Mesh.of(usual).facets().size()).isLessThan(60_000);
    }

    @Test
    void a_curve_through_points_is_followed() {
        List<Curve> curve = new ArrayList<>(MonotoneCubic.through(List.of(
                new MonotoneCubic.Point(mm(0), mm(10)),
                new MonotoneCubic.Point(mm(12), mm(18)),
                new MonotoneCubic.Point(mm(40), mm(4)),
                new MonotoneCubic.Point(mm(60), mm(9)))));
        Outline outline = Outline.of(mm(0), curve, Section.ROUND);
        for (Mesh.Corner corner : check("curve", outline).corners()) {
            double radius = outline.radiusAt(mm(corner.zMm())).mm();
            double out = Math.hypot(corner.xMm(), corner.yMm());
            assertThat(out == 0 || Math.abs(out / radius - 1) < 2.1e-4)
                    .as("%s at %s", out, corner.zMm())
                    .isTrue();
        }
    }

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static Outline round(Curve... curves) {
        return Outline.of(mm(0), List.of(curves), Section.ROUND);
    }

    /** Closed, looking outwards, of the exact volume. */
    private static Mesh check(String what, Outline outline) {
        Mesh mesh = Mesh.of(outline);
        double exact = Solid.of(outline, ANY).volumeMm3();
        assertThat(mesh.volumeMm3() / exact).as(what).isCloseTo(1, within(Mesh.SHARE));
        long[] edges = mesh.facets().stream()
                .flatMapToLong(each -> LongStream.of(
                        edge(each.first(), each.second()),
                        edge(each.second(), each.third()),
                        edge(each.third(), each.first())))
                .sorted()
                .toArray();
        for (int i = 0; i < edges.length; i++) {
            if (i > 0 && edges[i] == edges[i - 1]) {
                throw new AssertionError(what + ": an edge is run along twice the same way");
            }
            if (Arrays.binarySearch(edges, edge((int) edges[i], (int) (edges[i] >> 32))) < 0) {
                throw new AssertionError(what + ": an edge has one side only");
            }
        }
        return mesh;
    }

    private static long edge(int from, int to) {
        return ((long) from << 32) | to;
    }
}
