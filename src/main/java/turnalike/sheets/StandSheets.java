package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import turnalike.drawing.gauge.LegGuide;
import turnalike.drawing.gauge.RailStick;
import turnalike.drawing.gauge.SeatTemplate;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Svg;
import turnalike.job.Plan;
import turnalike.job.set.LegsFit;
import turnalike.job.set.RowFit;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** What a row's rails and a seat are marked and bored by. */
final class StandSheets {
    /** Paper joined over some metres: a hair in each joint. */
    private static final Length WITHIN = Length.ofMm(0.5);

    /** Longer paper seldom joins true (common practice, no source). */
    private static final Length LONGEST = Length.ofMm(3000);

    private static final String TAPE =
            " So long a stick of paper seldom joins true: hook a tape at the post instead, by the distances on the frame's sheet.";

    private StandSheets() {}

    /** Whether it is a row between posts. */
    static boolean hasRailStick(Plan plan) {
        return row(plan).isPresent();
    }

    /** The stick for both rails of a row between posts. */
    static Sheet railStick(Plan plan, Paper paper) {
        UnitSystem units = plan.job().units();
        return LongSheets.of(subject(plan, row(plan).orElseThrow(), units), units, paper);
    }

    private static Optional<RowFit> row(Plan plan) {
        return plan.frame().flatMap(fit -> fit instanceof RowFit row ? Optional.of(row) : Optional.empty());
    }

    private static LongSheets.Subject subject(Plan plan, RowFit row, UnitSystem units) {
        RowFit.Stand stand = row.stand();
        Length length = stand.alongRail(stand.clear());
        RailStick stick = new RailStick(
                length, stand.places().stream().map(stand::alongRail).toList(), row.holes());
        Svg svg = stick.svg(units);
        return new LongSheets.Subject(
                "rail-stick",
                "Stick for the rails: %s".formatted(plan.job().pattern().name()),
                List.of(
                        row.own().isEmpty()
                                ? "Heavy lines: the posts' faces. Lay both rails side by side, prick every cross. Local codes"
                                        + " decide how wide to leave."
                                : "Heavy lines: the posts' faces. Prick every cross on the upper rail; each piece stands plumb"
                                        + " below its own. Local codes decide how wide to leave.",
                        length.compareTo(LONGEST) > 0 ? seating(row, units) + TAPE : seating(row, units)),
                svg,
                svg,
                stick.datum(),
                stick.edge(),
                stick.listPlaces(),
                List.of(),
                stick.edge(),
                length,
                WITHIN);
    }

    /** Tenons are bored for; an end without one is cut to the slope. */
    private static String seating(RowFit row, UnitSystem units) {
        RowFit.Stand stand = row.stand();
        String off = stand.rake().format() + " off square";
        if (row.holes().isEmpty()) {
            String ends = row.own().isEmpty() ? "its ends " : "its upper end ";
            String lower = row.own().isEmpty() ? "" : ", the lower one to what it stands on";
            return "No tenons: each cross is a piece's middle. Cut " + ends + (stand.isRaked() ? off : "square") + lower
                    + ".";
        }
        String bits =
                row.holes().stream().map(hole -> hole.format(units)).distinct().collect(Collectors.joining(" and "));
        String which = row.cuts().isEmpty()
                ? ""
                : " in the %s rail; the %s end is cut"
                        .formatted(
                                row.cuts().get(0).upper() ? "lower" : "upper",
                                row.cuts().get(0).upper() ? "upper" : "lower");
        return (stand.isRaked() ? "Bore upright, " + off : "Bore square to the rail") + ", " + bits + which
                + "; a scrap first.";
    }

    /** Whether they are legs that lean. */
    static boolean hasLegGuide(Plan plan) {
        return legs(plan).filter(legs -> legs.angles().lean().degrees() > 0).isPresent();
    }

    /** The angles of a leg that leans. */
    static Sheet legGuide(Plan plan, Paper paper) {
        return guide(plan, legs(plan).orElseThrow(), paper);
    }

    /** Whether it is told where every leg enters a seat, and with what tenon. */
    static boolean hasSeatTemplate(Plan plan) {
        return legs(plan)
                .filter(legs -> legs.apart().isPresent() && legs.seat().isPresent())
                .filter(legs -> legs.feet().size() == legs.places())
                .isPresent();
    }

    /** The seat's holes at full size. */
    static Sheet seatTemplate(Plan plan, Paper paper) {
        LegsFit legs = legs(plan).orElseThrow();
        LegsFit.Seat seat = legs.seat().orElseThrow();
        SeatTemplate template = new SeatTemplate(
                legs.feet().stream()
                        .map(foot ->
                                new SeatTemplate.Hole(foot.side(), foot.front(), foot.movesSide(), foot.movesFront()))
                        .toList(),
                seat.hole());
        Angle lean = legs.angles().lean();
        String along = lean.degrees() > 0
                ? lean.format() + " off upright along the red line, so that the foot stands out where the arrow points"
                : "upright";
        String bore = "Bore %s, %s; a scrap first."
                .formatted(seat.hole().formatBoth(plan.job().units()), along);
        return TiledSheets.of(
                new TiledSheets.Subject(
                        "seat-template",
                        TiledSheets.title(legs, legs.board().word() + " from below: ", plan),
                        List.of(
                                ("Full size, the front at the top. Lay the pages over one another on the long dashes, then on the %s's underside by"
                                                + " its centre lines (short dashes); prick every cross.")
                                        .formatted(legs.board().word()),
                                bore),
                        template.whole(),
                        template.bare(),
                        template.names(),
                        template::touches),
                paper);
    }

    private static Optional<LegsFit> legs(Plan plan) {
        return plan.frame().flatMap(fit -> fit instanceof LegsFit legs ? Optional.of(legs) : Optional.empty());
    }

    private static Sheet guide(Plan plan, LegsFit legs, Paper paper) {
        PageFlow flow = new PageFlow("leg-guide", plan.job().title(), paper, paper.portrait());
        List<Flowing> parts = new ArrayList<>();
        parts.add(flow.head(plan.job().title(), "boring guide for legs"));
        Svg svg = new LegGuide(legs.angles(), legs.isRound()).svg();
        double right = (flow.widthMm() - svg.width().mm()) / 2;
        parts.add(Flowing.whole(
                List.of(Group.at(right, 0, svg.shapes())), svg.height().mm() + 4));
        String mirrored = legs.isRound()
                ? "Draw a line from the %s's middle through each hole and bore along it."
                        .formatted(legs.board().word())
                : "Draw the front-back line through each hole and the sight line from it, mirrored for "
                        + (legs.isPairOnly()
                                ? "the other one of the pair."
                                : "the legs of the other side and of the back.");
        parts.add(
                flow.sentences(
                        "How to use it",
                        List.of(
                                mirrored,
                                "Set a bevel to the lean and stand it on the sight line, or tilt the drill's table by it; the"
                                        + " bit leans so that the foot"
                                        + " stands outward.",
                                "Bore a scrap of the same wood first, stand a leg in it and look from the front and from the side.")));
        parts.add(flow.sentences(
                "Figures",
                legs.sentences(plan.job().units(), plan.job().tolerances().masses())));
        return flow.sheet(parts);
    }
}
