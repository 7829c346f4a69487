package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.trace.Original;
import turnalike.trace.Profile;
import turnalike.trace.Profile.Station;
import turnalike.trace.Traced;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/**
 * Reads a drawn outline, SVG or DXF: one closed outline found symmetrical about its long axis, or half of one closed along its axis.
 */
public final class DrawnOutline {
    /** How well a drawing is taken to tell a radius. */
    private static final Length SUREST = Length.ofMm(0.02);

    private static final double STEP_MM = 1e-3;
    /** Of the length; less is where the parts of a line meet. */
    private static final double UNDERCUT_MM = 0.2;
    /** Halfway through a step of a picture's pixels the outline it was drawn from is this share of the step off, in the mean. */
    private static final double STEP_SHARE = 0.3;

    private final List<String> notes = new ArrayList<>();
    private final Optional<Length> error;
    private final UnitSystem units;

    private DrawnOutline(Optional<Length> error, UnitSystem units) {
        this.error = error;
        this.units = units;
    }

    /** The formats. */
    public enum Format {
        /** Scalable Vector Graphics. */
        SVG,
        /** Drawing Exchange Format, as text. */
        DXF
    }

    /**
     * What came of reading.
     *
     * @param original empty when anything is wrong
     * @param scale millimetres for each of the drawing's units, and where that came from
     * @param problems what is wrong
     * @param notes what was assumed or is to be known, each a sentence
     */
    public record Read(Optional<Original> original, Traced.Scale scale, List<Problem> problems, List<String> notes) {
        public Read {
            problems = List.copyOf(problems);
            notes = List.copyOf(notes);
        }
    }

    /**
     * {@return the original that a drawing shows, or what is wrong with it}
     *
     * @param text of the file
     * @param format which it is
     * @param span the overall length to scale it to, if it is not to be of its own size
     * @param units of a drawing that names none, and to print in
     */
    public static Read read(String text, Format format, Optional<Length> span, UnitSystem units) {
        return read(text, format, span, Optional.empty(), units);
    }

    /**
     * {@return the same of one whose diameters are known so well}
     *
     * @param text of the file
     * @param format which it is
     * @param span the overall length to scale it to, if it is not to be of its own size
     * @param error one standard deviation of a diameter; empty to see it from how the outline wavers
     * @param units of a drawing that names none, and to print in
     */
    public static Read read(
            String text, Format format, Optional<Length> span, Optional<Length> error, UnitSystem units) {
        boolean inches = units == UnitSystem.INCH;
        Drawing drawing = format == Format.SVG
                ? SvgDrawing.read(text)
                : DxfDrawing.read(
                        text,
                        inches ? 25.4 : 1,
                        inches ? "inches, as --units says" : "millimetres, since it names no unit");
        return new DrawnOutline(error, units).read(drawing, format == Format.SVG, span);
    }

    private Read read(Drawing drawing, boolean yDown, Optional<Length> span) {
        if (drawing.problem().isPresent()) {
            return refused(drawing.problem().get());
        }
        Strokes.Choice choice = Strokes.choose(drawing.strokes());
        if (choice.outline().isEmpty()) {
            return refused(new Problem(
                    "drawing",
                    drawing.notes().isEmpty() ? choice.what() : choice.what() + ". " + trimmed(drawing.notes()),
                    "draw one closed outline of the piece, or half of it closed along its axis"));
        }
        notes.addAll(drawing.notes());
        Stroke drawn = yDown
                ? new Affine(1, 0, 0, -1, 0, 0).of(choice.outline().get())
                : choice.outline().get();
        Optional<Double> axis = drawing.axisY().map(y -> yDown ? -y : y);
        double raw = axis.isPresent() ? width(drawn) : -1;
        Placed unscaled = axis.map(y -> onAxis(drawn, y)).orElseGet(() -> Placed.of(drawn));
        raw = raw < 0 ? new Sides(unscaled.spots()).end() - new Sides(unscaled.spots()).start() : raw;
        double mm = span.isPresent() ? span.get().mm() / raw : drawing.mmPerUnit();
        String from = span.isPresent() ? "the span given" : drawing.from();
        double length = raw * mm;
        if (!(length >= 5 && length <= Length.LONGEST.mm())) {
            return refused(new Problem(
                    "drawing",
                    "its outline is %s long by %s".formatted(String.format(Locale.ROOT, "%.3g mm", length), from),
                    "give its length with --span"));
        }
        if (span.isEmpty() && !drawing.isTold()) {
            notes.add("Its size is taken from %s: %s long; --span scales it to another."
                    .formatted(from, Length.ofMm(length).formatBoth(units)));
        }
        if (choice.others() > 0) {
            notes.add(
                    choice.others() == 1
                            ? "Another line of the drawing was left aside; the largest closed outline is the piece."
                            : "%d other lines of the drawing were left aside; the largest closed outline is the piece."
                                    .formatted(choice.others()));
        }
        if (choice.isFramed()) {
            notes.add("A rectangle round the outline is taken for the drawing's frame.");
        }
        Traced.Scale scale = new Traced.Scale(OptionalDouble.of(mm), from);
        List<Spot> spots = unscaled.spots().stream()
                .map(each -> new Spot(each.x() * mm, each.y() * mm, each.isKnot()))
                .toList();
        return outline(new Placed(spots, unscaled.isHalf()), axis.isPresent(), scale);
    }

    /** The first of the notes, as the end of a sentence. */
    private static String trimmed(List<String> notes) {
        return notes.get(0).substring(0, notes.get(0).length() - 1);
    }

    private static Read refused(Problem problem) {
        return new Read(Optional.empty(), new Traced.Scale(OptionalDouble.empty(), ""), List.of(problem), List.of());
    }

    private static double width(Stroke drawn) {
        return drawn.spots().stream().mapToDouble(Spot::x).max().orElse(0)
                - drawn.spots().stream().mapToDouble(Spot::x).min().orElse(0);
    }

    private static Placed onAxis(Stroke drawn, double axis) {
        return new Placed(
                drawn.spots().stream()
                        .map(each -> new Spot(each.x(), Math.abs(each.y() - axis), each.isKnot()))
                        .toList(),
                true);
    }

    private Read outline(Placed placed, boolean isTemplate, Traced.Scale scale) {
        Stairs stairs = Stairs.of(placed.spots());
        double shake = shake(stairs);
        Length surest = Length.ofMm(Math.max(SUREST.mm(), shake));
        Sides sides = new Sides(stairs.spots());
        List<Sides.Across> across = sides.all();
        if (!placed.isHalf()) {
            Evenness even = Evenness.of(across, sides.start());
            if (even.isCrooked()) {
                return refused(even.problem(units));
            }
            even.note(units).ifPresent(notes::add);
        }
        if (undercut(across) > UNDERCUT_MM) {
            notes.add("In places the outline folds back over itself (an undercut); its outermost line was taken.");
        }
        List<Station> stations = new ArrayList<>();
        for (Sides.Across each : across) {
            double r = isTemplate ? each.low() : placed.isHalf() ? each.high() : each.half();
            Station station = new Station(
                    Length.ofMm(Math.max(0, each.x() - sides.start())), Length.ofMm(Math.max(0, r)), surest);
            if (stations.isEmpty() || !isRepeated(stations.get(stations.size() - 1), station)) {
                stations.add(station);
            }
        }
        Length length = Length.ofMm(sides.end() - sides.start());
        Profile profile = new Profile(length, stations, List.of());
        Profile fitted = new Profile(length, FitStations.of(told(stations, shake), sides, shake), List.of());
        notes.add(
                isTemplate
                        ? "The drawing is one of our own checking templates: radii are counted from its axis."
                        : placed.isHalf()
                                ? "The drawing is half an outline: its longest straight edge is the axis."
                                : "The drawing is a whole outline: its axis lies halfway between its sides.");
        notes.add("A drawing does not tell what was left square: set such members to square in the job.");
        return new Read(
                Optional.of(new Original(profile, List.of(), surest, fitted, Length.ZERO)), scale, List.of(), notes);
    }

    /** What a steady hand drew too narrow for any member is left out; a shaky one is fitted to within its shake. */
    private List<Station> told(List<Station> stations, double shake) {
        if (shake > 0) {
            return stations;
        }
        NarrowNotches narrow = NarrowNotches.without(stations);
        if (!narrow.placesMm().isEmpty()) {
            notes.add(
                    "At %s the outline has a notch or ridge narrower than any member, left out (%d in all): widen it in the drawing if it is meant."
                            .formatted(
                                    Length.ofMm(narrow.placesMm().get(0)).formatBoth(units),
                                    narrow.placesMm().size()));
        }
        return narrow.stations();
    }

    /** One standard deviation of a radius: as told, else as the outline itself shows it; zero where it shows none. */
    private double shake(Stairs stairs) {
        if (error.isPresent()) {
            return error.get().mm() / 2;
        }
        if (stairs.stepMm() > 0) {
            notes.add(
                    "The outline runs in steps of %s, as one drawn round a picture's pixels does: it was followed halfway through them; --error says it better."
                            .formatted(Length.ofMm(stairs.stepMm()).formatMeasuredBoth(units)));
            return STEP_SHARE * stairs.stepMm();
        }
        double shake = Shake.of(stairs.spots());
        if (shake < SUREST.mm()) {
            return 0;
        }
        notes.add("The outline wavers by some %s: members are fitted to within that; --error says it better."
                .formatted(Length.ofMm(shake).formatMeasuredBoth(units)));
        return shake;
    }

    /** Over how much of its length the outline is crossed more than twice. */
    private static double undercut(List<Sides.Across> across) {
        double sum = 0;
        for (int i = 0; i + 1 < across.size(); i++) {
            boolean both = across.get(i).crossings() > 2 && across.get(i + 1).crossings() > 2;
            sum += both ? across.get(i + 1).x() - across.get(i).x() : 0;
        }
        return sum;
    }

    /** Just before a place and just after it the same radius was found: no shoulder. */
    private static boolean isRepeated(Station last, Station next) {
        return last.place().equals(next.place())
                && Math.abs(last.radius().minus(next.radius()).mm()) < STEP_MM;
    }
}
