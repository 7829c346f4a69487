package turnalike.drawing.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.stock.boards.Board;
import turnalike.stock.boards.CuttingPlan;
import turnalike.stock.boards.CuttingPlan.CutBlank;
import turnalike.stock.boards.CuttingPlan.CutBoard;
import turnalike.stock.boards.CuttingPlan.LeftOver;
import turnalike.stock.boards.CuttingPlan.Rip;
import turnalike.stock.boards.CuttingPlan.Strip;
import turnalike.stock.boards.SawCut;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * A board seen from above with its cuts numbered in the order of sawing: blanks in the colour of wood, faults hatched, the grain's direction,
 * what is left over white. Where its strips lie over one another it is drawn once for each layer, the upper face first.
 */
public final class BoardDrawing {
    private static final double LEFT_MM = 9;
    private static final double RIGHT_MM = 2;
    private static final double TOP_MM = 5;
    private static final double BELOW_MM = 6;

    /** A strip is drawn at least so high, that a number stands in it. */
    private static final double LEAST_STRIP_MM = 5.5;

    /** Above so high a board would fill the page. */
    private static final double MOST_MM = 60;

    private static final double HATCH_MM = 2.2;

    private final CutBoard cut;
    private final UnitSystem units;
    private final List<String> jobs;
    private final List<SawCut> cuts;
    private final List<LeftOver> kept;
    private final double across;
    private final double along;
    private final List<Shape> out = new ArrayList<>();

    private BoardDrawing(CutBoard cut, CuttingPlan plan, UnitSystem units, List<String> jobs, Length width) {
        this.cut = cut;
        this.units = units;
        this.jobs = jobs;
        this.cuts = SawCut.of(cut, plan.order().sawing());
        this.kept = plan.leftOver().stream()
                .filter(each ->
                        each.label().equals(cut.label()) && each.length().compareTo(plan.keep()) >= 0)
                .toList();
        this.along = (width.mm() - LEFT_MM - RIGHT_MM) / cut.board().length().mm();
        double narrowest =
                cut.rips().stream().mapToDouble(rip -> rip.size().mm()).min().orElse(1);
        double wished = Math.max(along, LEAST_STRIP_MM / narrowest);
        this.across = Math.min(wished, MOST_MM / cut.board().width().mm());
    }

    /**
     * The picture.
     *
     * @param cut the board with what is cut from it
     * @param plan it is part of
     * @param units to print in
     * @param jobs the jobs' names, the first of which is drawn as A, the next as B, …
     * @param width of the picture
     */
    public static Svg svg(CutBoard cut, CuttingPlan plan, UnitSystem units, List<String> jobs, Length width) {
        BoardDrawing drawing = new BoardDrawing(cut, plan, units, jobs, width);
        double height = drawing.draw();
        String title = "board %s, %s long, cut into %d blanks"
                .formatted(
                        cut.label(),
                        cut.board().length().format(units),
                        cut.strips().stream()
                                .mapToInt(strip -> strip.blanks().size())
                                .sum());
        return new Svg(width, Length.ofMm(height), title, drawing.out);
    }

    /** {@return the letter a job is drawn as: A, B, …, and its number from the 27th on} */
    public static String letter(int job) {
        return job < 26 ? String.valueOf((char) ('A' + job)) : Integer.toString(job + 1);
    }

    private double draw() {
        int layers =
                cut.rips().stream().mapToInt(rip -> rip.strips().size()).max().orElse(1);
        double y = 0;
        for (int layer = 0; layer < layers; layer++) {
            List<Shape> view = new ArrayList<>();
            view(view, layer, layers);
            out.add(Group.at(LEFT_MM, y + TOP_MM, view));
            y += TOP_MM + cut.board().width().mm() * across + BELOW_MM;
        }
        return y;
    }

    private void view(List<Shape> view, int layer, int layers) {
        double length = cut.board().length().mm() * along;
        double width = cut.board().width().mm() * across;
        view.add(Path.rectangle(Pen.PAPER, 0, 0, length, width));
        for (int rip = 0; rip < cut.rips().size(); rip++) {
            if (layer < cut.rips().get(rip).strips().size()) {
                blanks(view, rip, layer);
            }
        }
        cut.board().faults().forEach(fault -> fault(view, fault));
        along(view, length);
        for (int rip = 0; rip < cut.rips().size(); rip++) {
            if (layer < cut.rips().get(rip).strips().size()) {
                crossCuts(view, rip, layer);
            }
        }
        kept.stream().filter(each -> each.layer() == layer).forEach(each -> kept(view, each));
        view.add(Path.rectangle(Pen.OUTLINE, 0, 0, length, width));
        if (layers > 1) {
            view.add(TextLine.of(
                    Lettering.SMALL,
                    0,
                    -1.2,
                    layer == 0 ? "strips 1, at the upper face" : "strips %d, below".formatted(layer + 1)));
        }
        if (across > along * 1.01) {
            view.add(TextLine.of(
                    Lettering.SMALL,
                    0,
                    width + 4,
                    String.format(
                            Locale.ROOT, "the width is drawn %.1f times as large as the length", across / along)));
        }
        grain(view, length, width);
    }

    private double y(Length place) {
        return place.mm() * across;
    }

    private double x(Length place) {
        return place.mm() * along;
    }

    private void blanks(List<Shape> view, int rip, int layer) {
        Rip of = cut.rips().get(rip);
        for (CutBlank blank : of.strips().get(layer).blanks()) {
            double from = x(blank.from());
            double width = x(blank.of().length());
            view.add(Path.rectangle(Pen.WOOD_FLAT, from, y(of.from()), width, y(of.size())));
            view.add(Path.rectangle(Pen.FINE, from, y(of.from()), width, y(of.size())));
        }
    }

    /** Crossed by slanting lines, cut off where the fault or the board ends. */
    private void fault(List<Shape> view, Board.Fault fault) {
        double from = x(fault.from());
        double to = Math.max(from + 0.6, x(fault.to()));
        double width = y(cut.board().width());
        List<Path> lines = new ArrayList<>();
        for (double start = from - width; start < to; start += HATCH_MM) {
            double left = Math.max(from, start);
            double right = Math.min(to, start + width);
            if (right > left) {
                lines.add(Path.line(Pen.FINE, left, width - (left - start), right, width - (right - start)));
            }
        }
        view.add(Path.rectangle(Pen.PAPER, from, 0, to - from, width));
        view.addAll(Path.together(Pen.FINE, lines));
    }

    /** First edge and rips, their numbers at the left end. */
    private void along(List<Shape> view, double length) {
        double lastNumber = Double.NEGATIVE_INFINITY;
        for (SawCut each : cuts) {
            if (each.kind() == SawCut.Kind.EDGE || each.kind() == SawCut.Kind.RIP) {
                double y = y(each.at());
                view.add(Path.line(Pen.ACCENT, -1.5, y, length, y));
                if (y - lastNumber > 2.8) {
                    view.add(TextLine.ending(Lettering.SMALL, -2, y + 1, Integer.toString(each.number())));
                    lastNumber = y;
                }
            }
        }
    }

    /** The number stands inside the blank, beside its cut; what does not fit is told in the text alone. */
    private void crossCuts(List<Shape> view, int rip, int layer) {
        Rip of = cut.rips().get(rip);
        Strip strip = of.strips().get(layer);
        List<SawCut> own = cuts.stream()
                .filter(each -> each.kind() == SawCut.Kind.CROSS && each.rip() == rip && each.layer() == layer)
                .toList();
        double top = y(of.from());
        double base = top + y(of.size()) / 2 + 1;
        for (SawCut each : own) {
            view.add(Path.line(Pen.ACCENT, x(each.at()), top, x(each.at()), top + y(of.size())));
        }
        for (CutBlank blank : strip.blanks()) {
            double left = x(blank.from()) + 0.8;
            double right = x(blank.from().plus(blank.of().length())) - 0.8;
            left += number(view, own, blank.from(), left, right, base, true);
            right -= number(view, own, blank.from().plus(blank.of().length()), left, right, base, false);
            label(view, blank, left, right, base);
        }
    }

    private static double number(
            List<Shape> view, List<SawCut> own, Length at, double left, double right, double base, boolean atStart) {
        for (SawCut each : own) {
            String number = Integer.toString(each.number());
            double wide = Lettering.SMALL.widthMm(number);
            if (each.at().equals(at) && wide <= right - left) {
                view.add(
                        atStart
                                ? TextLine.of(Lettering.SMALL, left, base, number)
                                : TextLine.ending(Lettering.SMALL, right, base, number));
                return wide + 1.5;
            }
        }
        return 0;
    }

    private void label(List<Shape> view, CutBlank blank, double left, double right, double base) {
        String letter = letter(jobs.indexOf(blank.of().job()));
        String whole = "%s  %s".formatted(letter, blank.of().length().format(units));
        for (String text : List.of(whole, letter)) {
            if (Lettering.STRONG.widthMm(text) <= right - left - 1) {
                view.add(TextLine.centred(Lettering.STRONG, (left + right) / 2, base, text));
                return;
            }
        }
    }

    private void kept(List<Shape> view, LeftOver each) {
        String text = "left over  " + each.length().format(units);
        double middle = x(each.from()) + x(each.length()) / 2;
        if (Lettering.SMALL.widthMm(text) <= x(each.length()) - 1 && y(each.width()) > 3.6) {
            view.add(TextLine.centred(Lettering.SMALL, middle, y(each.across()) + y(each.width()) / 2 + 1, text));
        }
    }

    private static void grain(List<Shape> view, double length, double width) {
        double y = width + 3;
        double from = length - 24;
        view.add(TextLine.ending(Lettering.SMALL, from - 1.5, y + 1, "grain"));
        view.add(Path.line(Pen.LINE, from, y, length, y));
        view.add(Path.through(Pen.LINE, from + 1.8, y - 1, from, y, from + 1.8, y + 1));
        view.add(Path.through(Pen.LINE, length - 1.8, y - 1, length, y, length - 1.8, y + 1));
    }
}
