package turnalike.job.set;

import java.util.List;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

/**
 * How a piece of the pattern sits between hub and rim.
 *
 * @param hubEnd which end enters the hub
 * @param shoulder of the hub tenon, from the start end; the hub end itself where there is no tenon
 * @param hubTenon length of the hub tenon; zero for none
 * @param rimTenon length of the tenon at the other end; zero for none
 */
record Seating(End hubEnd, Length shoulder, Length hubTenon, Length rimTenon) {
    static Seating of(Pattern pattern, End hubEnd) {
        List<PlacedMember> run = pattern.placed();
        boolean atStart = hubEnd == End.START;
        Length first = tenon(run.get(0));
        // A run of one member has one tenon, not two.
        Length last = run.size() > 1 ? tenon(run.get(run.size() - 1)) : Length.ZERO;
        if (atStart) {
            return new Seating(hubEnd, first, first, last);
        }
        Length hub = run.size() > 1 ? last : first;
        return new Seating(hubEnd, pattern.length().minus(hub), hub, run.size() > 1 ? first : Length.ZERO);
    }

    private static Length tenon(PlacedMember placed) {
        return placed.member().lengthInHole();
    }

    boolean onTenon() {
        return hubTenon.isPositive();
    }

    /** From the hub tenon's shoulder outward to the balance point, which is measured from the start end. */
    Length fromShoulder(Length balance) {
        return hubEnd == End.START ? balance.minus(shoulder) : shoulder.minus(balance);
    }

    /** From the hub tenon's shoulder to where the piece meets the rim, of a piece measured from end to end. */
    Length spoke(Length overall) {
        return overall.minus(hubTenon).minus(rimTenon);
    }
}
