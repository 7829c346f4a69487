package turnalike.job.set;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import turnalike.frame.RowGap;
import turnalike.frame.RowOpening;
import turnalike.outline.Outline;
import turnalike.turning.EndSlopes;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * How a pattern stands in a row.
 *
 * @param stand where the pieces stand
 * @param between the largest ball between two pieces; empty for one piece
 * @param own each place's piece in its own length; none where all pieces are as drawn
 * @param besides the same for every two lengths that stand side by side; none where all pieces are as drawn
 * @param end the largest beside a post, the wider of the two
 * @param endAtUpper whether that is the post beyond the last piece
 * @param gap where two pieces come nearest, measured level; empty for one piece
 * @param holes diameters of the holes in the lower and the upper rail, of those tenons that there are
 * @param cuts the ends that have no tenon, cut to the rail's slope
 * @param limit a ball that must not pass, if there is a limit
 * @param misfits what cannot be built or lets a larger ball pass
 * @param workings how the figures were found
 */
public record RowFit(
        Stand stand,
        Optional<RowOpening.Ball> between,
        List<Own> own,
        List<Beside> besides,
        RowOpening.Ball end,
        boolean endAtUpper,
        Optional<RowGap.Nearest> gap,
        List<Length> holes,
        List<CutEnd> cuts,
        Optional<Length> limit,
        List<Misfit> misfits,
        List<Working> workings)
        implements FrameFit {
    /** A ball that must not pass a guard by what people commonly hold one to; never a limit of its own. */
    public static final CodeFigure CODE = new CodeFigure(
            Length.ofInches(4),
            Length.ofInches(4.375),
            RowFitting.CODE,
            "seen in a county's print of the code, not in the code itself; check with your local authority");

    /**
     * A figure of a model code.
     *
     * @param ball diameter of the one that must not pass
     * @param openStair the same on the open side of a stair
     * @param from where it stands
     * @param status how far that is known
     */
    public record CodeFigure(Length ball, Length openStair, String from, String status) {}

    /** Where a limit comes from that the job tells. */
    public static final String YOURS = "yours";

    /** What is lower stands on furniture: even what tops a low wall has taller pieces (common practice, no source). */
    private static final Length LOW = Length.ofMm(200);

    private static final int TOLD_PLACES = 60;
    private static final int A_LINE = 6;

    /** What a rule does not show. */
    private static final double LEVEL_MM = 0.05;

    public RowFit {
        own = List.copyOf(own);
        besides = List.copyOf(besides);
        holes = List.copyOf(holes);
        cuts = List.copyOf(cuts);
        misfits = List.copyOf(misfits);
        workings = List.copyOf(workings);
    }

    /**
     * One place's piece where several lengths are made.
     *
     * @param letter of its length
     * @param outline of the whole piece, from its start end
     * @param start where its start shoulder lies in that
     * @param foot how much higher than a piece as drawn its start shoulder stands; below zero where it reaches further down
     */
    public record Own(String letter, Outline outline, Length start, Length foot) {}

    /**
     * Two lengths side by side.
     *
     * @param left letter of the one, nearer to the first post
     * @param right letter of the other
     * @param rise how much higher the right one's start shoulder lies; below zero where it lies lower
     * @param ball the largest that passes between them
     * @param gap where they come nearest
     */
    public record Beside(String left, String right, Length rise, Length ball, RowGap.Nearest gap) {
        private String text(UnitSystem units) {
            String foot = rise.abs().mm() < LEVEL_MM
                    ? "level"
                    : "%s %s at its foot".formatted(rise.abs().format(units), rise.mm() > 0 ? "higher" : "lower");
            return "%s, then %s, %s: %s".formatted(left, right, foot, ball.formatUpBoth(units));
        }
    }

    /**
     * An end without a tenon, cut so that it lies on its rail.
     *
     * @param upper whether it is the end at the upper rail
     * @param beyond how much further than on its axis it reaches on its longer side, rounded up to a step of the job's rule; zero where the rails
     *     are level
     */
    public record CutEnd(boolean upper, Length beyond) {
        private String word() {
            return upper ? "upper" : "lower";
        }
    }

    /**
     * Where the pieces stand between posts and rails.
     *
     * @param exposed what of a piece stands between its shoulders
     * @param clear between the posts' faces, level
     * @param height between the rails, measured upright on an axis
     * @param rake of the rails
     * @param pitch from axis to axis, level; empty for one piece whose distance from the post is told
     * @param places each axis from the first post's face, level, in order
     */
    public record Stand(
            Outline exposed, Length clear, Length height, Angle rake, Optional<Length> pitch, List<Length> places) {
        public Stand {
            places = List.copyOf(places);
        }

        /**
         * {@return how much higher the rails are at a place than at the first post's face}
         *
         * @param aside from that face, level
         */
        public Length rise(Length aside) {
            return aside.times(Math.tan(rake.radians()));
        }

        /**
         * {@return a level distance measured along the rails}
         *
         * @param level the distance
         */
        public Length alongRail(Length level) {
            return level.times(1 / Math.cos(rake.radians()));
        }

        /** {@return whether the rails slope} */
        public boolean isRaked() {
            return rake.degrees() > 0;
        }
    }

    /**
     * {@return the first place, from 0, at which the two lengths stand side by side between which the largest ball passes; the middle one
     * where all are as drawn}
     */
    public int widestAt() {
        Optional<Beside> widest = besides.stream().max(Comparator.comparing(Beside::ball));
        for (int i = 0; widest.isPresent() && i + 1 < own.size(); i++) {
            if (own.get(i).letter().equals(widest.get().left())
                    && own.get(i + 1).letter().equals(widest.get().right())) {
                return i;
            }
        }
        return (stand.places.size() - 1) / 2;
    }

    /** {@return the largest ball that passes anywhere} */
    public Length widest() {
        return between.map(RowOpening.Ball::diameter)
                .filter(each -> each.compareTo(end.diameter()) > 0)
                .orElse(end.diameter());
    }

    @Override
    public Optional<Length> touches() {
        return gap.filter(each -> each.left().mm() < -RowRoom.ROUNDING_MM)
                .map(each -> stand.exposed.start().plus(each.at()));
    }

    @Override
    public List<String> facts(UnitSystem units, MassUnit masses) {
        List<String> out = new ArrayList<>();
        int places = stand.places.size();
        out.add("Frame      a row of %d between posts %s apart, rails %s apart%s"
                .formatted(
                        places,
                        stand.clear.formatBoth(units),
                        stand.height.formatBoth(units),
                        stand.isRaked() ? ", on a rake of " + stand.rake.format() : ""));
        out.add("  axes     the first %s from the post's face%s"
                .formatted(
                        stand.places.get(0).formatBoth(units),
                        places < 2
                                ? ""
                                : stand.pitch
                                        .map(pitch -> ", then every %s%s"
                                                .formatted(
                                                        pitch.formatBoth(units),
                                                        stand.isRaked()
                                                                ? ", level; along the rail "
                                                                        + stand.alongRail(pitch)
                                                                                .formatBoth(units)
                                                                : ""))
                                        .orElse("")));
        out.addAll(running(units));
        cut(units).ifPresent(out::add);
        String beside = "%s beside %s"
                .formatted(
                        end.diameter().formatUpBoth(units),
                        stand.isRaked() ? (endAtUpper ? "the upper post" : "the lower post") : "a post");
        out.add("  openings the largest ball that passes is "
                + between.map(ball -> "%s between two pieces, %s"
                                .formatted(ball.diameter().formatUpBoth(units), beside))
                        .orElse(beside));
        if (besides.size() > 1) {
            out.add("           by lengths, "
                    + besides.stream().map(each -> each.text(units)).collect(Collectors.joining("; ")));
        }
        limit.ifPresent(most -> out.add("           your limit is %s: %s"
                .formatted(new RuleSteps(units).print(most), isKept(most) ? "kept as drawn" : "not kept")));
        if (mayGuardDrop()) {
            out.add("  caution  check with your local authority: a figure of the drawing is no approval");
        }
        return out;
    }

    /**
     * {@return whether somebody might lean on it above a drop} No job says so. A stair's rails rise or its pieces have their lengths, whoever sets a
     * limit has one to keep, and what is not low may stand on a landing; a gallery on a desk or a shelf is none of these.
     */
    public boolean mayGuardDrop() {
        return mayGuardDrop(stand, limit, !own.isEmpty());
    }

    static boolean mayGuardDrop(Stand stand, Optional<Length> limit, boolean ofLengths) {
        return stand.isRaked() || limit.isPresent() || ofLengths || stand.height.compareTo(LOW) >= 0;
    }

    /**
     * {@return whether no larger ball passes}
     *
     * @param most the largest that may
     */
    public boolean isKept(Length most) {
        return widest().mm() <= most.mm() + RowRoom.SURE_MM;
    }

    /** {@inheritDoc} Of several lengths only the upper end is: below each stands on a tread. */
    @Override
    public EndSlopes slopes() {
        return new EndSlopes(own.isEmpty() ? beyond(false) : Length.ZERO, beyond(true));
    }

    private Length beyond(boolean upper) {
        return cuts.stream()
                .filter(each -> each.upper() == upper)
                .map(CutEnd::beyond)
                .findFirst()
                .orElse(Length.ZERO);
    }

    /** What is turned square at its ends is cut where it stands: on a slope that takes more of the blank than its axis is long. */
    private Optional<String> cut(UnitSystem units) {
        if (cuts.isEmpty()) {
            return Optional.empty();
        }
        if (!own.isEmpty()) {
            return Optional.of("  ends     "
                    + cuts.stream().map(each -> ownCut(each, units)).collect(Collectors.joining("; ")));
        }
        String which = cuts.size() > 1
                ? "no tenons: cut both ends"
                : "no tenon at the %s end: cut it".formatted(cuts.get(0).word());
        if (!stand.isRaked()) {
            return Optional.of("  ends     " + which + " square, to the rails");
        }
        List<String> beyond = cuts.stream()
                .map(each -> each.beyond().formatBoth(units))
                .distinct()
                .toList();
        return Optional.of(
                "  ends     %s on the slope, %s off square; beyond the axis the longer side reaches %s, which the blank must have"
                        .formatted(
                                which,
                                stand.rake.format(),
                                beyond.size() == 1
                                        ? beyond.get(0) + (cuts.size() > 1 ? " at each end" : "")
                                        : "%s below and %s above".formatted(beyond.get(0), beyond.get(1))));
    }

    /** Of several lengths only the upper rail runs straight; below each stands on a tread. */
    private String ownCut(CutEnd cut, UnitSystem units) {
        if (!cut.upper()) {
            return "no tenon at the lower end: cut it to what it stands on";
        }
        if (!stand.isRaked()) {
            return "no tenon at the upper end: cut it square, to the rail";
        }
        return "no tenon at the upper end: cut it on the slope, %s off square; beyond the axis its longer side reaches %s, which the blank must have"
                .formatted(stand.rake.format(), cut.beyond().formatBoth(units));
    }

    /** From the one face every time, so that slips do not add up. */
    private List<String> running(UnitSystem units) {
        List<String> out = new ArrayList<>();
        if (stand.places.size() < 2 || stand.places.size() > TOLD_PLACES) {
            return out;
        }
        for (int i = 0; i < stand.places.size(); i += A_LINE) {
            String places = String.join(
                    ", ",
                    stand.places.subList(i, Math.min(stand.places.size(), i + A_LINE)).stream()
                            .map(at -> stand.alongRail(at).format(units))
                            .toList());
            String from = stand.isRaked() ? "along the rail" : "level";
            out.add((i == 0 ? "           from that face, %s: ".formatted(from) : GOES_ON) + places);
        }
        return out;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.row(this);
    }
}
