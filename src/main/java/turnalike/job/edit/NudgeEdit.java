package turnalike.job.edit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import turnalike.job.kept.JobText;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKey;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;
import turnalike.units.Problem;

/**
 * Boundaries and diameters moved by a hair, all at one stroke.
 *
 * @param shifts in the order they are made; one at least, else {@link IllegalArgumentException}
 */
public record NudgeEdit(List<Shift> shifts) implements JobEdit {
    public NudgeEdit {
        shifts = List.copyOf(shifts);
        if (shifts.isEmpty()) {
            throw new IllegalArgumentException("a nudge moves something, had no shifts");
        }
    }

    /**
     * One size moved.
     *
     * @param number of the member, from 1
     * @param key {@code length}: its far boundary, and the next member gives what it gains; else the diameter of that key
     * @param by how much longer or thicker, below zero for less
     */
    public record Shift(int number, String key, Length by) {
        /** {@return whether a boundary is moved rather than a diameter} */
        public boolean isBoundary() {
            return key.equals(MemberKey.LENGTH);
        }

        /** {@return in one word, for {@link NudgeEdit#parse}: {@code 3:crown:-0.396875}, in millimetres} */
        String format() {
            return String.format(Locale.ROOT, "%d:%s:%s", number, key, by.mm());
        }
    }

    /** {@return in one line, for {@link #parse}} */
    public String format() {
        return shifts.stream().map(Shift::format).collect(Collectors.joining(" "));
    }

    /**
     * {@return the edit that {@link #format} gave that text for; empty when it is none}
     *
     * @param text a word for each shift
     */
    public static Optional<NudgeEdit> parse(String text) {
        List<Shift> out = new ArrayList<>();
        for (String word : text.strip().split("\\s+", -1)) {
            String[] parts = word.split(":", -1);
            boolean sound = parts.length == 3
                    && parts[0].matches("\\d{1,4}")
                    && parts[2].matches("-?\\d{1,5}(\\.\\d{1,20})?(E-\\d{1,3})?");
            if (!sound) {
                return Optional.empty();
            }
            out.add(new Shift(Integer.parseInt(parts[0]), parts[1], Length.ofMm(Double.parseDouble(parts[2]))));
        }
        return Optional.of(new NudgeEdit(out));
    }

    @Override
    public String what(JobText before) {
        List<PlacedMember> run = before.job().pattern().placed();
        return "nudge "
                + shifts.stream().map(shift -> what(shift, run)).distinct().collect(Collectors.joining(", "));
    }

    private static String what(Shift shift, List<PlacedMember> run) {
        boolean there = shift.number() >= 1 && shift.number() <= run.size();
        String where = there ? run.get(shift.number() - 1).where() : "member " + shift.number();
        return (shift.isBoundary() ? "the end" : "the " + shift.key()) + " of " + where.replaceAll("\\p{Cntrl}", " ");
    }

    @Override
    public JobText.Read on(JobText text) {
        JobTree tree = JobTree.of(text);
        // What one shift makes of a length, a later one builds on: two boundaries may move on either side of a member.
        Length[] lengths =
                text.job().pattern().members().stream().map(Member::length).toArray(Length[]::new);
        for (Shift shift : shifts) {
            Optional<Problem> problem =
                    shift.isBoundary() ? boundary(text, tree, shift, lengths) : size(text, tree, shift);
            if (problem.isPresent()) {
                return MemberEdit.refused(problem.get());
            }
        }
        return tree.read();
    }

    private static Optional<Problem> boundary(JobText text, JobTree tree, Shift shift, Length[] lengths) {
        int index = shift.number() - 1;
        if (index < 0 || index + 1 >= lengths.length) {
            return notThere(shift);
        }
        lengths[index] = lengths[index].plus(shift.by());
        lengths[index + 1] = lengths[index + 1].minus(shift.by());
        for (int i = index; i <= index + 1; i++) {
            Member member = text.job().pattern().members().get(i);
            if (!lengths[i].isPositive()) {
                return Optional.of(new Problem(
                        text.job().pattern().placed().get(i).where(),
                        "would have no length left",
                        "move the boundary less far"));
            }
            // A curve's points are stretched as they stand in the tree, so from the length that they have there.
            MemberFields.length(
                    tree.member(i + 1),
                    written(tree, i, member),
                    lengths[i],
                    text.job().units());
        }
        return Optional.empty();
    }

    /** The member as the tree has it by now: a second stretch of a curve starts from the first one's points. */
    private static Member written(JobTree tree, int index, Member before) {
        if (MemberFields.hasLength(before.kind())) {
            return before;
        }
        return tree.read()
                .text()
                .map(each -> each.job().pattern().members().get(index))
                .orElse(before);
    }

    private static Optional<Problem> size(JobText text, JobTree tree, Shift shift) {
        List<Member> members = text.job().pattern().members();
        boolean there = shift.number() >= 1 && shift.number() <= members.size();
        Optional<Length> was = there ? members.get(shift.number() - 1).sizes().find(shift.key()) : Optional.empty();
        ObjectNode node = there ? tree.member(shift.number()) : JobTree.object();
        if (was.isEmpty() || !node.has(shift.key())) {
            return notThere(shift);
        }
        node.put(
                shift.key(),
                LengthSpelling.of(was.get().plus(shift.by()), text.job().units()));
        return Optional.empty();
    }

    private static Optional<Problem> notThere(Shift shift) {
        return Optional.of(new Problem(
                "member " + shift.number(), "has no %s to move".formatted(shift.key()), "look at the run again"));
    }
}
