package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import turnalike.frame.RowGap;
import turnalike.frame.RowOpening;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/** Sets a pattern into a row, looks what touches and what passes, and what, changed alone, would mend it. */
final class RowFitting {
    /** What people commonly hold a guard to. As the project's references have it: a county's print of the code was seen, not the code. */
    static final String CODE = "International Residential Code 2018, R312.1.3";

    private final int places;
    private final RowRails rails;
    private final RowOfLengths lengths;
    private final RowRoom room;
    private final Pattern pattern;
    private final RuleSteps steps;
    private final List<Misfit> forbidding = new ArrayList<>();
    private final List<Misfit> thin = new ArrayList<>();

    private RowFitting(InRow frame, Pattern pattern, UnitSystem units) {
        this.places = frame.places();
        this.rails = frame.rails();
        this.room = RowRoom.of(rails, pattern);
        this.lengths = RowOfLengths.of(frame, pattern, room);
        this.pattern = pattern;
        this.steps = new RuleSteps(units);
    }

    /** Only of a row between posts. */
    static RowFit of(InRow frame, Pattern pattern, UnitSystem units) {
        return new RowFitting(frame, pattern, units).fit();
    }

    private RowFit fit() {
        Optional<Length> pitch = room.pitch(places);
        Length first = room.first(places);
        List<Length> axes = IntStream.range(0, places)
                .mapToObj(i -> pitch.map(step -> first.plus(step.times(i))).orElse(first))
                .toList();
        RowFit.Stand stand =
                new RowFit.Stand(room.exposed(), rails.clear().orElseThrow(), room.height(), rails.rake(), pitch, axes);
        Optional<RowGap.Nearest> gap =
                lengths.nearest().map(RowOfLengths.Pair::gap).or(() -> room.gap(places));
        Optional<RowOpening.Ball> between =
                lengths.widest().map(RowOfLengths.Pair::ball).or(() -> room.between(places));
        RowRoom.EndBall end = lengths.end().orElseGet(() -> room.end(places));
        gap.filter(each -> each.left().mm() < -RowRoom.ROUNDING_MM).ifPresent(each -> lengths.nearest()
                .ifPresentOrElse(
                        pair -> touch(pair.touching(steps), List.of()), () -> touch(touching(each), slimmer(each))));
        if (room.postGap(places).mm() < -RowRoom.ROUNDING_MM) {
            post();
        }
        rails.largestOpening().ifPresent(limit -> opening(limit, between, end));
        if (lengths.hidden()) {
            forbidding.add(hidden());
        }
        List<RowFit.CutEnd> cuts = cuts();
        blank(cuts);
        List<Misfit> misfits = new ArrayList<>(forbidding);
        misfits.addAll(thin);
        return new RowFit(
                stand,
                between,
                lengths.own(),
                besides(),
                end.ball(),
                end.atUpper(),
                gap,
                holes(),
                cuts,
                rails.largestOpening(),
                misfits,
                workings(RowFit.mayGuardDrop(
                        stand, rails.largestOpening(), !lengths.own().isEmpty())));
    }

    private List<RowFit.Beside> besides() {
        return lengths.pairs().stream()
                .map(pair -> new RowFit.Beside(
                        PieceLength.letter(pair.left()),
                        PieceLength.letter(pair.right()),
                        pair.rise(),
                        pair.ball().diameter(),
                        pair.gap()))
                .toList();
    }

    private Misfit hidden() {
        return new Misfit(
                true,
                "row",
                "the shortest of the lengths ends inside the upper rail: nothing of it stands between the rails",
                "lengthen it, or give rails_apart nearer to what stands between the drawn piece's shoulders");
    }

    private List<Length> holes() {
        List<PlacedMember> run = pattern.placed();
        List<PlacedMember> ends = run.size() > 1 ? List.of(run.get(0), run.get(run.size() - 1)) : run;
        return ends.stream()
                .flatMap(placed -> placed.member().enters().stream())
                .map(Member.Hole::diameter)
                .toList();
    }

    private List<RowFit.CutEnd> cuts() {
        List<PlacedMember> run = pattern.placed();
        List<RowFit.CutEnd> out = new ArrayList<>();
        PlacedMember first = run.get(0);
        PlacedMember last = run.get(run.size() - 1);
        if (!first.member().lengthInHole().isPositive()) {
            out.add(new RowFit.CutEnd(false, beyond(first.outline().startRadius())));
        }
        if (!last.member().lengthInHole().isPositive()) {
            out.add(new RowFit.CutEnd(true, beyond(last.outline().endRadius())));
        }
        return out;
    }

    /**
     * A square stands with a flat to the post: half its side. In steps of a rule, and never less, from here on: what is told of the frame, left on
     * the blank and laid in from its end is one figure.
     */
    private Length beyond(Length radius) {
        return steps.up(radius.times(Math.tan(rails.rake().radians())));
    }

    /** The slope at an end takes more of the blank than the piece is long on its axis. */
    private void blank(List<RowFit.CutEnd> cuts) {
        Length wanted = cuts.stream().map(RowFit.CutEnd::beyond).reduce(pattern.length(), Length::plus);
        Length have = pattern.stock().length();
        if (wanted.mm() > have.mm() + RowRoom.ROUNDING_MM) {
            thin.add(new Misfit(
                    false,
                    "blank",
                    "%s long, is too short for ends cut on the slope: with their longer sides a piece takes %s"
                            .formatted(steps.print(have), steps.print(steps.upRoughly(wanted))),
                    "take the blank that long, and cut to the slope after turning"));
        }
    }

    private String touching(RowGap.Nearest nearest) {
        Length at = room.exposed().start().plus(nearest.at());
        return "%s runs %s into that of its neighbour, %s from the start end"
                .formatted(
                        ExposedPart.thickest(pattern, at).where(),
                        steps.much(nearest.left().abs()),
                        steps.reckoned(at));
    }

    /** How thick it may be there, on level rails, where both are the same there and round. */
    private List<String> slimmer(RowGap.Nearest nearest) {
        Length at = room.exposed().start().plus(nearest.at());
        Length most = steps.down(room.pitch(places).orElseThrow());
        boolean square = room.exposed().sectionAt(at).reachFactor() > 1;
        return rails.rake().degrees() == 0 && most.isPositive() && !square
                ? List.of("no more than %s thick there".formatted(steps.print(most)))
                : List.of();
    }

    private void touch(String what, List<String> slimmer) {
        List<String> ways = new ArrayList<>(fewerOrWider());
        ways.addAll(slimmer);
        forbidding.add(new Misfit(true, "row", what, Misfit.ways(ways)));
    }

    private void post() {
        List<String> ways = new ArrayList<>();
        if (rails.end().isPresent()) {
            ways.add("its axis %s or more from the post".formatted(steps.print(steps.up(room.reach()))));
        } else {
            ways.addAll(fewerOrWider());
        }
        forbidding.add(new Misfit(
                true,
                "row",
                "the piece beside a post runs %s into it"
                        .formatted(steps.much(room.postGap(places).abs())),
                Misfit.ways(ways)));
    }

    /** What gives every piece its room: level neighbours take the most. */
    private List<String> fewerOrWider() {
        List<String> ways = new ArrayList<>();
        room.mostThatStand(places)
                .ifPresent(most -> ways.add(most == 1 ? "1 place" : "%d places at most".formatted(most)));
        Length pitch = room.reach().times(2);
        Length clear = rails.end()
                .map(end -> pitch.times(places - 1).plus(end.times(2)))
                .orElse(pitch.times(places + 1).minus(room.thickest().times(2)));
        ways.add("posts %s apart or more".formatted(steps.print(steps.upRoughly(clear))));
        return ways;
    }

    private void opening(Length limit, Optional<RowOpening.Ball> between, RowRoom.EndBall end) {
        List<String> passes = new ArrayList<>();
        List<String> ways = new ArrayList<>();
        double most = limit.mm() + RowRoom.SURE_MM;
        Optional<RowOpening.Ball> wide = between.filter(ball -> ball.diameter().mm() > most);
        boolean besidePost = end.ball().diameter().mm() > most;
        wide.ifPresent(ball -> passes.add("of %s between two pieces".formatted(steps.much(ball.diameter()))));
        if (besidePost) {
            passes.add("of %s beside a post".formatted(steps.much(end.ball().diameter())));
        }
        if (passes.isEmpty()) {
            return;
        }
        Optional<Length> nearer = besidePost && rails.end().isPresent() ? nearest(limit) : Optional.empty();
        if (nearer.isPresent()) {
            RowRoom changed = RowRoom.of(rails.withEnd(nearer.get()), pattern);
            ways.add("the first axis %s from the post would keep it there".formatted(steps.print(nearer.get())));
            if (places < 2 || !changed.keeps(places, limit)) {
                ways.add("with that, " + morePieces(changed));
            }
        } else if (besidePost && rails.end().isPresent()) {
            ways.add("no distance from the post keeps it there: take a fuller pattern or set the rails nearer");
        } else if (lengths.pairs().isEmpty()) {
            ways.add(morePieces(room));
        } else {
            ways.add("take more pieces on each tread or a fuller pattern, and plan again");
        }
        thin.add(new Misfit(
                false,
                "row",
                "a ball %s passes, more than your limit of %s"
                        .formatted(String.join(" and one ", passes), steps.print(limit)),
                String.join("; ", ways)));
    }

    private String morePieces(RowRoom changed) {
        RowRoom.Fewest fewest = changed.fewest();
        if (fewest.keep()) {
            String touching = changed.touches(fewest.places()) ? ", but they would run into one another" : "";
            return "%d places keep it%s".formatted(fewest.places(), touching);
        }
        Length least = changed.between(fewest.places())
                .map(RowOpening.Ball::diameter)
                .orElse(changed.end(fewest.places()).ball().diameter());
        return ("no number of pieces keeps it: of %d, the most that stand without touching, a ball of %s still passes; take a"
                        + " fuller pattern or set the rails nearer")
                .formatted(fewest.places(), steps.much(least));
    }

    /** The furthest from a post, in steps that a rule shows, at which the limit is kept there. */
    private Optional<Length> nearest(Length limit) {
        int furthest = (int) Math.floor(room.first(places).mm() / steps.fine().mm());
        for (int i = furthest; i >= 1; i--) {
            Length at = steps.fine().times(i);
            if (at.compareTo(room.reach()) < 0) {
                return Optional.empty();
            }
            if (!room.lowerEnd().withApart(at).passesMoreThan(limit)
                    && !room.upperEnd().withApart(at).passesMoreThan(limit)) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    private List<Working> workings(boolean mayGuardDrop) {
        List<Working> out = new ArrayList<>();
        String spacing = rails.end().isPresent()
                ? "(clear - 2 x the first axis' distance) / (places - 1)"
                : "(clear + 2 x greatest radius) / (places + 1), the first axis that less the greatest radius from the post: the gap at the"
                        + " thickest place, %s from the axis, is the same everywhere"
                                .formatted(steps.print(room.thickest()));
        out.add(new Working(
                "where the pieces stand", spacing, Working.DERIVED, "exact; level from the first post's face"));
        out.add(new Working(
                "the largest ball that passes",
                "the largest circle in the plane of the axes that touches neither outline, rail nor post; the lower rail's face passes"
                        + " through each piece's start shoulder on its axis",
                Working.DERIVED,
                "none larger by 0.00001 mm passes as drawn; a square counts with half its side where a ball passes and half its diagonal"
                        + " where pieces touch"));
        if (mayGuardDrop) {
            out.add(new Working(
                    "a limit that is often set",
                    "no ball of 4 in (102 mm) through a guard, on the open side of a stair none of 4 3/8 in (111 mm): "
                            + CODE,
                    CODE,
                    "yours comes first; check with your local authority: a figure of the drawing is no approval"));
        }
        if (!lengths.pairs().isEmpty()) {
            out.add(
                    new Working(
                            "openings of several lengths",
                            "every piece's end shoulder touches the upper rail's straight line; its start shoulder lies lower by its own length;"
                                    + " what two neighbours stand on runs straight from one start shoulder to the next",
                            Working.DERIVED,
                            "exact for that; where a riser stands between two pieces, the corner under that line is not reckoned: measure it"));
        }
        return out;
    }
}
