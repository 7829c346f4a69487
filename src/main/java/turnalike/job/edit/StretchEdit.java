package turnalike.job.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import turnalike.job.Job;
import turnalike.job.kept.JobText;
import turnalike.pattern.Member;
import turnalike.units.Length;
import turnalike.units.Problem;

/**
 * The piece made another length by some of its members, each by its share; the others keep their shape, and the blank keeps what it is longer.
 * Each comes out to 1/64 in or 0.1 mm, the last of them takes what that leaves.
 *
 * @param whole the piece's length after it, end to end
 * @param members that give or take it, numbered from 1
 */
public record StretchEdit(Length whole, SortedSet<Integer> members) implements JobEdit {
    public StretchEdit {
        members = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(members));
    }

    @Override
    public String what(JobText before) {
        String numbers = members.stream().map(String::valueOf).collect(Collectors.joining(", "));
        return "stretch the piece to %s by member%s %s"
                .formatted(whole.format(before.job().units()), members.size() == 1 ? "" : "s", numbers);
    }

    @Override
    public JobText.Read on(JobText text) {
        Job job = text.job();
        List<Member> run = job.pattern().members();
        if (members.isEmpty() || members.first() < 1 || members.last() > run.size()) {
            return MemberEdit.refused(
                    new Problem("members", "none is chosen that is there", "choose those that may grow or shrink"));
        }
        Length given = Length.ZERO;
        for (int number : members) {
            given = given.plus(run.get(number - 1).length());
        }
        Length wanted = given.plus(whole.minus(job.pattern().length()));
        if (!wanted.isPositive()) {
            return MemberEdit.refused(new Problem(
                    "length",
                    "would take more than the %s that those members have".formatted(given.format(job.units())),
                    "choose more members, or a longer piece"));
        }
        List<Length> lengths = new ArrayList<>(run.stream().map(Member::length).toList());
        Length left = wanted;
        for (int number : members) {
            boolean last = number == members.last();
            Length share = RunLengths.rounded(lengths.get(number - 1).times(wanted.mm() / given.mm()), job.units());
            lengths.set(number - 1, last ? left : share);
            left = left.minus(share);
        }
        if (!lengths.get(members.last() - 1).isPositive()) {
            return MemberEdit.refused(new Problem(
                    "length", "leaves those members next to nothing", "choose more members, or a longer piece"));
        }
        JobTree tree = JobTree.of(text);
        RunLengths.set(tree, job, lengths);
        return tree.read();
    }
}
