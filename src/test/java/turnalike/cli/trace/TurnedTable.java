package turnalike.cli.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.UnaryOperator;
import turnalike.outline.Section;
import turnalike.outline.Segment;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.Stock;
import turnalike.units.Length;

/** A piece turned after a pattern with some of its sizes wrong, as calipers would read it: invented, with known truth. */
final class TurnedTable {
    private final List<Member> run;
    private final Pattern pattern;

    TurnedTable(Pattern pattern) {
        this.pattern = pattern;
        this.run = new ArrayList<>(pattern.members());
    }

    /** Makes a size of a member, counted from 1, so much more. */
    TurnedTable with(int member, String key, double moreMm) {
        return with(member, key, size -> size.plus(Length.ofMm(moreMm)));
    }

    private TurnedTable with(int member, String key, UnaryOperator<Length> change) {
        Member was = run.get(member - 1);
        Length size = was.sizes().lengths().get(key);
        run.set(member - 1, was.kind().make(was.sizes().with(key, change.apply(size))));
        return this;
    }

    Pattern piece() {
        Stock roomy = new Stock(
                Section.SQUARE,
                pattern.stock().size().times(2),
                pattern.stock().length().times(2));
        return new Pattern(pattern.name(), roomy, run);
    }

    /** Rows every so far and at both sides of every joint, in mm; diameters scatter by {@code sigmaMm}. */
    String csv(double stepMm, double sigmaMm, long seed) {
        Random dice = new Random(seed);
        StringBuilder out = new StringBuilder("x,diameter,side\n");
        for (Segment segment : piece().outline().segments()) {
            double length = segment.curve().length().mm();
            int parts = (int) Math.max(1, Math.ceil(length / stepMm));
            for (int i = 0; i <= parts; i++) {
                double inside = length * i / parts;
                double across = 2 * segment.curve().radiusMm(inside) + sigmaMm * dice.nextGaussian();
                out.append(String.format(
                        Locale.ROOT,
                        segment.section() == Section.SQUARE ? "%.3f,,%.3f%n" : "%.3f,%.3f,%n",
                        segment.start().mm() + inside,
                        across));
            }
        }
        return out.toString();
    }
}
