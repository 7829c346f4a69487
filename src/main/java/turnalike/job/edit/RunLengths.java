package turnalike.job.edit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.job.CheckPlace;
import turnalike.job.Job;
import turnalike.pattern.Member;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** The members of a run made other lengths, with the blank and the places where a caliper is laid. */
final class RunLengths {
    private RunLengths() {}

    /** A length to what a rule or a caliper tells, 1/64 in or 0.1 mm, one of them at least. */
    static Length rounded(Length length, UnitSystem units) {
        Length step = units == UnitSystem.INCH ? Length.ofInches(1 / 64.0) : Length.ofMm(0.1);
        return step.times(Math.max(1, (double) Math.round(length.mm() / step.mm())));
    }

    /** Makes each member so long; the blank grows or shrinks with the whole, and check places keep their share of their member. */
    static void set(JobTree tree, Job job, List<Length> lengths) {
        List<PlacedMember> run = job.pattern().placed();
        Length whole = Length.ZERO;
        for (int i = 0; i < run.size(); i++) {
            Member member = run.get(i).member();
            if (!lengths.get(i).equals(member.length())) {
                MemberFields.length(tree.member(i + 1), member, lengths.get(i), job.units());
            }
            whole = whole.plus(lengths.get(i));
        }
        Length more = whole.minus(job.pattern().length());
        ObjectNode stock = (ObjectNode) tree.pattern().get("stock");
        stock.put("length", LengthSpelling.of(job.pattern().stock().length().plus(more), job.units()));
        if (tree.root().get("checks") instanceof ArrayNode checks) {
            for (int i = 0; i < job.checks().size(); i++) {
                // Where a caliper is laid is found with a rule, as every other size is.
                Length at = rounded(moved(job.checks().get(i), run, lengths), job.units());
                ((ObjectNode) checks.get(i))
                        .put("at", LengthSpelling.of(at.compareTo(whole) > 0 ? whole : at, job.units()));
            }
        }
    }

    private static Length moved(CheckPlace check, List<PlacedMember> run, List<Length> lengths) {
        Length start = Length.ZERO;
        for (int i = 0; i < run.size(); i++) {
            PlacedMember placed = run.get(i);
            boolean last = i + 1 == run.size();
            if (last || check.at().compareTo(placed.end()) < 0) {
                double share = check.at().minus(placed.start()).mm()
                        / placed.member().length().mm();
                return start.plus(lengths.get(i).times(share));
            }
            start = start.plus(lengths.get(i));
        }
        throw new IllegalStateException("a run has members");
    }
}
