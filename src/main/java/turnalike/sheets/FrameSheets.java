package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import turnalike.drawing.frame.FrameElevation;
import turnalike.drawing.gauge.PlaceStrip;
import turnalike.drawing.gauge.PlacedName;
import turnalike.drawing.gauge.RimTemplate;
import turnalike.drawing.gauge.SegmentTemplate;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Svg;
import turnalike.job.Plan;
import turnalike.job.set.FrameFit;
import turnalike.job.set.Misfit;
import turnalike.job.set.WheelFit;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** The sheets of a frame: how it will stand, and the strips to bore it by. */
final class FrameSheets {
    /** Paper stretches and wraps over itself: a hair in each joint. */
    private static final Length WITHIN = Length.ofMm(0.5);

    /** More pages than this are joined by nobody; the strip inside the rim bores the same. */
    private static final int MOST_PAGES = 40;

    private static final double SMALLER_MM = 110;

    private FrameSheets() {}

    static boolean hasPicture(Plan plan) {
        return plan.frame().isPresent();
    }

    /** The frame drawn to scale with its figures. */
    static Sheet picture(Plan plan, Paper paper) {
        FrameFit fit = plan.frame().orElseThrow();
        FrameElevation usual = new FrameElevation(plan.job().pattern(), widthMm(paper));
        Sheet sheet = picture(plan, fit, usual, paper);
        if (sheet.pageCount() == 1) {
            return sheet;
        }
        // Rather a smaller picture than a second page with two lines on it.
        Sheet smaller = picture(plan, fit, new FrameElevation(usual.pattern(), usual.widthMm(), SMALLER_MM), paper);
        return smaller.pageCount() < sheet.pageCount() ? smaller : sheet;
    }

    private static double widthMm(Paper paper) {
        return paper.portrait().width().minus(Paper.MARGIN.times(2)).mm();
    }

    /** Whether there is a mortise to bore in a hub. */
    static boolean hasHubStrip(Plan plan) {
        return wheel(plan).flatMap(WheelFit::hub).isPresent();
    }

    /** The strip round the hub. */
    static Sheet hubStrip(Plan plan, Paper paper) {
        WheelFit fit = wheel(plan).orElseThrow();
        return strip(plan, "hub", fit.strip(), fit, fit.hub().orElseThrow(), paper);
    }

    /** Whether there is one to bore in a rim. */
    static boolean hasRimStrip(Plan plan) {
        return wheel(plan).flatMap(WheelFit::rimSeats).isPresent();
    }

    /** The strip inside the rim. */
    static Sheet rimStrip(Plan plan, Paper paper) {
        WheelFit fit = wheel(plan).orElseThrow();
        Length round = fit.innerRadius().times(2 * Math.PI);
        return strip(plan, "rim", round, fit, fit.rimSeats().orElseThrow(), paper);
    }

    /** Whether a rim's segments and width are told, and one fits either paper. */
    static boolean hasSegment(Plan plan) {
        return segment(plan)
                .filter(subject -> Stream.of(Paper.values())
                        .allMatch(paper -> LongSheets.fits(subject.drawing().height(), paper)))
                .isPresent();
    }

    /** One segment of the rim to saw out by. */
    static Sheet segment(Plan plan, Paper paper) {
        return LongSheets.of(segment(plan).orElseThrow(), plan.job().units(), paper);
    }

    private static Optional<LongSheets.Subject> segment(Plan plan) {
        UnitSystem units = plan.job().units();
        return wheel(plan)
                .flatMap(fit -> fit.rim().flatMap(rim -> fit.outerRadius().map(outer -> {
                    SegmentTemplate template = new SegmentTemplate(rim, fit.innerRadius(), outer, fit.places());
                    Svg svg = template.svg(units);
                    return new LongSheets.Subject(
                            "rim-segment",
                            "Rim segment: %d of them".formatted(rim.segments()),
                            List.of(
                                    "Full size, one segment; the long grain lies along the arrow. Saw %d, ends %s off square."
                                            .formatted(
                                                    rim.segments(), rim.mitre().format()),
                                    "Dashed: the middle of each mortise. Lay the whole ring out dry before any glue."),
                            svg,
                            svg,
                            template.datum(),
                            template.edge(),
                            template.listPlaces(),
                            List.of(),
                            template.edge(),
                            template.chord(),
                            WITHIN);
                })));
    }

    /** Whether there is a rim to bore, and its template takes no more pages than anybody would join. */
    static boolean hasRimTemplate(Plan plan) {
        return rimTemplate(plan)
                .filter(subject ->
                        Stream.of(Paper.values()).allMatch(paper -> TiledSheets.pages(subject, paper) <= MOST_PAGES))
                .isPresent();
    }

    /** Where the rim's template would take more pages than that: how many, and how its places are struck without it. */
    static Optional<List<String>> trammel(Plan plan, Paper paper) {
        UnitSystem units = plan.job().units();
        return rimTemplate(plan).filter(subject -> !hasRimTemplate(plan)).flatMap(subject -> wheel(plan)
                .map(fit -> RimTrammel.sentences(fit, TiledSheets.pages(subject, paper), MOST_PAGES, units)));
    }

    /** The whole rim from the front, to bore it by. */
    static Sheet rimTemplate(Plan plan, Paper paper) {
        return TiledSheets.of(rimTemplate(plan).orElseThrow(), paper);
    }

    private static Optional<TiledSheets.Subject> rimTemplate(Plan plan) {
        UnitSystem units = plan.job().units();
        return wheel(plan).flatMap(fit -> fit.rimSeats()
                .filter(seats -> seats.hole().compareTo(fit.innerRadius().times(2)) < 0)
                .map(seats -> {
                    RimTemplate template = new RimTemplate(
                            fit.places(), fit.innerRadius(), fit.outerRadius(), seats.hole(), seats.depth(), fit.rim());
                    return new TiledSheets.Subject(
                            "rim-template",
                            TiledSheets.title(fit, "rim from the front: ", plan),
                            List.of(joining(fit), boring(fit, seats, units)),
                            template.whole(),
                            template.bare(),
                            template.numbers().stream().map(PlacedName::of).toList(),
                            template::touches);
                }));
    }

    private static String joining(WheelFit fit) {
        String joints = fit.rim().isPresent() ? " Thin lines across the ring are its segments' joints." : "";
        return "Full size. Lay the pages over one another on the long dashes and the inner circle on the rim's inner edge; pages of the middle that"
                + " would be empty are left out."
                + joints;
    }

    private static String boring(WheelFit fit, WheelFit.Seats seats, UnitSystem units) {
        String rows = fit.stagger().isPositive()
                ? "on two rows %s apart along the axle, odd places on one, even ones on the other"
                        .formatted(fit.stagger().formatFineBoth(units))
                : "half-way through the thickness";
        return ("Carry each red line over the inner edge with a square, prick it %s, and bore from the inside along the line: %s,"
                        + " %s deep (short dashes); a scrap first.")
                .formatted(rows, seats.hole().formatBoth(units), seats.depth().formatBoth(units));
    }

    private static Optional<WheelFit> wheel(Plan plan) {
        return plan.frame().flatMap(fit -> fit instanceof WheelFit wheel ? Optional.of(wheel) : Optional.empty());
    }

    private static Sheet picture(Plan plan, FrameFit fit, FrameElevation elevation, Paper paper) {
        UnitSystem units = plan.job().units();
        PageFlow flow = new PageFlow("frame", plan.job().title(), paper, paper.portrait());
        List<Flowing> parts = new ArrayList<>();
        parts.add(flow.head(plan.job().title(), "the frame as it will stand"));
        List<String> told = fit.misfits().stream().map(Misfit::sentence).toList();
        if (!told.isEmpty()) {
            parts.add(flow.sentences(fit.buildable() ? "Before you build it" : "Cannot be built as drawn", told));
        }
        Svg svg = fit.match(elevation);
        double right = (flow.widthMm() - svg.width().mm()) / 2;
        parts.add(Flowing.whole(
                List.of(Group.at(right, 0, svg.shapes())), svg.height().mm() + 2));
        parts.add(flow.sentences(
                "Figures", fit.sentences(units, plan.job().tolerances().masses())));
        trammel(plan, paper).ifPresent(lines -> parts.add(flow.sentences("The rim by a trammel", lines)));
        return flow.sheet(parts);
    }

    private static Sheet strip(Plan plan, String what, Length round, WheelFit fit, WheelFit.Seats seats, Paper paper) {
        UnitSystem units = plan.job().units();
        PlaceStrip strip = new PlaceStrip(what, round, fit.places(), fit.stagger());
        Svg svg = strip.svg(units);
        String rows =
                fit.stagger().isPositive() ? "Odd places on the first row, even ones on the second: prick" : "Prick";
        return LongSheets.of(
                new LongSheets.Subject(
                        what + "-strip",
                        "Strip %s the %s: %s"
                                .formatted(
                                        what.equals("rim") ? "inside" : "round",
                                        what,
                                        plan.job().pattern().name()),
                        List.of(
                                "Full size; cut along the long dashes. The first and the last line are one: there the ends meet.",
                                "%s each cross. Bore %s, %s deep; a scrap of the same wood first."
                                        .formatted(
                                                rows,
                                                seats.hole().formatBoth(units),
                                                seats.depth().formatBoth(units))),
                        svg,
                        svg,
                        strip.datum(),
                        strip.edge(),
                        strip.listPlaces(),
                        List.of(),
                        strip.edge(),
                        round,
                        WITHIN),
                units,
                paper);
    }
}
