package turnalike.photo;

import java.util.List;
import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.job.original.OriginalTrace;
import turnalike.job.original.OriginalWish;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.Member;
import turnalike.trace.Profile;
import turnalike.trace.Snap;
import turnalike.trace.Traced;
import turnalike.trace.TracedMember;
import turnalike.trace.fit.Score;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Counts the members that a made picture's trace tells. */
final class MembersTold {
    private MembersTold() {}

    /**
     * How many members were told right, of how many; the same of those of which both ends and all but a seventh part were seen; how many were named
     * wrongly, and how many of these without a word that they rest on what was not seen.
     */
    static int[] of(MemberPhotoScenes.Known known, byte[] picture) {
        Length length = Length.ofMm(known.scene().shape().length());
        Traced traced = OriginalTrace.photograph(
                        picture,
                        OriginalWish.of(UnitSystem.METRIC, Optional.of(length), Optional.empty(), Snap.NONE),
                        Effort.unlimited())
                .traced()
                .orElseThrow();
        int[] told = new int[6];
        double at = 0;
        for (Member member : known.run()) {
            Length from = Length.ofMm(at);
            at += member.length().mm();
            boolean right = Score.isTold(traced.run(), member, from.mm());
            boolean seen = isSeen(traced.original().fitted().hidden(), from.mm(), at, length.mm());
            told[0] += right ? 1 : 0;
            told[1]++;
            told[2] += right && seen ? 1 : 0;
            told[3] += seen ? 1 : 0;
        }
        for (TracedMember each : traced.run().members()) {
            boolean wrong = isWrong(each, known.run());
            told[4] += wrong ? 1 : 0;
            told[5] += wrong && !each.uncertain() ? 1 : 0;
        }
        return told;
    }

    /** Whether less than half of what it covers is of the kind it is named after; a curve claims no kind. */
    private static boolean isWrong(TracedMember named, List<Member> run) {
        if (named.member() instanceof FreeCurve) {
            return false;
        }
        double from = named.from().mm();
        double to = named.to().mm();
        double same = 0;
        double at = 0;
        for (Member each : run) {
            double end = at + each.length().mm();
            same += each.kind() == named.member().kind() ? Math.max(0, Math.min(to, end) - Math.max(from, at)) : 0;
            at = end;
        }
        return same < 0.5 * (to - from);
    }

    private static boolean isSeen(List<Profile.Stretch> hidden, double from, double to, double length) {
        double dark = 0;
        boolean ends = true;
        for (Profile.Stretch each : hidden) {
            double begin = each.from().mm();
            double finish = each.to().mm();
            dark += Math.max(0, Math.min(to, finish) - Math.max(from, begin));
            boolean small = finish - begin <= Score.END_MM;
            boolean overStart = from > 0 && begin < from + 0.5 && finish > from + 1;
            boolean overEnd = to < length - 0.1 && begin < to - 1 && finish > to - 0.5;
            ends &= small || !(overStart || overEnd);
        }
        return ends && dark < 0.15 * (to - from);
    }
}
