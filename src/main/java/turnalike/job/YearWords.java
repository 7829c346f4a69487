package turnalike.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.units.Length;
import turnalike.units.PlainNumber;
import turnalike.units.UnitSystem;
import turnalike.wood.Moisture;
import turnalike.year.Joint;
import turnalike.year.JointYear;
import turnalike.year.Season;

/** The joints through the year in words, the same on paper, on the page and on the command line. */
public final class YearWords {
    /** Said wherever a joint is judged. */
    public static final String CAUTION =
            "Trust a trial joint before these figures: woods of one name move more and less than the printed mean, rings seldom run true, and"
                    + " bit, glue and finish count too. Where a joint bears a person, test it before it is used";

    /** A difference of sizes below this is none. */
    private static final double NOTHING_MM = 0.0005;

    private YearWords() {}

    /**
     * {@return the lines, a heading and then each joint's, indented}
     *
     * @param year the joints
     * @param units in which lengths come first
     */
    public static List<String> lines(YearOfJoints year, UnitSystem units) {
        List<String> out = new ArrayList<>();
        out.add("The year   wood comes to %s when dry and %s when damp"
                .formatted(season(year.home().dry()), season(year.home().damp())));
        if (year.stands().isEmpty()) {
            out.add(
                    year.untold().isEmpty()
                            ? "  no tenon goes into a hole"
                            : "  nothing can be said of its joints, see below");
            return out;
        }
        for (YearOfJoints.Stand stand : year.stands()) {
            out.add("  %s in the %s".formatted(stand.tenon().caption(), stand.hole()));
            joint(stand, year.snug(), units).forEach(line -> out.add("    " + line));
        }
        out.add("  From %s tight on it is asked about. %s."
                .formatted(year.snug().formatSteadyBoth(units), CAUTION));
        return out;
    }

    private static String season(Season season) {
        return season.from()
                .map(from -> String.format(
                        Locale.ROOT,
                        "%.1f %% (air of %s °C and %s %% humidity)",
                        season.moisture().pct(),
                        PlainNumber.toTenths(from.air().celsius()),
                        PlainNumber.toTenths(100 * from.air().relativeHumidity())))
                .orElseGet(() -> season.moisture().text());
    }

    /**
     * {@return one joint, a sentence each: as made, dry, damp, how loose and how tight, and what would keep it tight}
     *
     * @param stand the joint
     * @param most the interference from which on it is asked about
     * @param units in which lengths come first
     */
    public static List<String> joint(YearOfJoints.Stand stand, Length most, UnitSystem units) {
        JointYear year = stand.year();
        Joint joint = year.joint();
        List<String> out = new ArrayList<>();
        out.add("%s at %s is turned to %s, the hole in %s at %s is bored %s wide: %s"
                .formatted(
                        joint.tenonWood().species().name(),
                        joint.tenonWood().made().text(),
                        joint.tenon().formatFine(units),
                        joint.holeWood().species().name(),
                        joint.holeWood().made().text(),
                        joint.hole().formatFine(units),
                        fit(joint.tenon().minus(joint.hole()), units)));
        out.add("dry   " + sizes(year.dry(), units));
        out.add("damp  " + sizes(year.damp(), units));
        out.add("loosest when %s: %s; tightest when %s: %s"
                .formatted(
                        year.loosestInDry() ? "dry" : "damp",
                        fit(year.loosest(), units),
                        year.tightestInDry() ? "dry" : "damp",
                        fit(year.tightest(), units)));
        out.add("set with its rings across the %s's grain: %s at its loosest, %s at its tightest"
                .formatted(
                        stand.hole(), fit(year.loosestRingsAcross(), units), fit(year.tightestRingsAcross(), units)));
        out.add(snug(year, most, units));
        return out;
    }

    private static String sizes(Joint.Sizes sizes, UnitSystem units) {
        return "tenon %s along its rings, %s across them, %s; hole %s across its grain, %s along it"
                .formatted(
                        sizes.tangential().formatSteady(units),
                        sizes.radial().formatSteady(units),
                        isNothing(sizes.oval())
                                ? "round"
                                : "oval by " + sizes.oval().abs().formatSteadyBoth(units),
                        sizes.holeAcross().formatSteady(units),
                        sizes.holeAlong().formatSteady(units));
    }

    private static String snug(JointYear year, Length most, UnitSystem units) {
        Moisture made = year.joint().tenonWood().made();
        Optional<Moisture> found = year.joint().snugMoisture(year.home());
        String thicker = year.joint().snugDiameter(year.home()).formatSteady(units);
        if (found.isEmpty()) {
            return ("no drying keeps it tight all year: even a tenon turned to size at %s is loose by %s; turn it %s thick at %s"
                            + " instead, or glue and wedge it")
                    .formatted(
                            Joint.DRIEST.text(),
                            year.turnedAt(Joint.DRIEST).loosest().abs().formatSteadyBoth(units),
                            thicker,
                            made.text());
        }
        if (found.get().equals(made)) {
            return "as turned it stays tight all year";
        }
        Moisture dried = Moisture.ofPct(Math.floor(found.get().pct() * 10) / 10);
        Moisture told = dried.compareTo(Joint.DRIEST) < 0 ? Joint.DRIEST : dried;
        JointYear dry = year.turnedAt(told);
        return ("to stay tight all year: dry the tenon to %s, turn it to size then and join it before it takes up water (up to %s"
                        + " tight when %s%s); or turn it %s thick at %s")
                .formatted(
                        told.text(),
                        dry.tightest().formatSteadyBoth(units),
                        dry.tightestInDry() ? "dry" : "damp",
                        dry.tightest().compareTo(most) >= 0 ? ", which is asked about" : "",
                        thicker,
                        made.text());
    }

    private static String fit(Length interference, UnitSystem units) {
        return fit(interference, interference.abs().formatSteadyBoth(units));
    }

    /**
     * {@return how tenon and hole meet: {@code 0.22 mm tight}, {@code 0.08 mm of play}, {@code size for size}}
     *
     * @param interference tenon less hole
     * @param units the one system it is told in
     */
    public static String briefFit(Length interference, UnitSystem units) {
        return fit(interference, interference.abs().formatSteady(units));
    }

    private static String fit(Length interference, String told) {
        if (isNothing(interference)) {
            return "size for size";
        }
        return told + (interference.isPositive() ? " tight" : " of play");
    }

    private static boolean isNothing(Length difference) {
        return Math.abs(difference.mm()) < NOTHING_MM;
    }
}
