package turnalike.job.edit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import turnalike.job.kept.JobText;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKey;
import turnalike.pattern.MemberKind;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Room;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/** A new member put into the run, and where its length comes from. */
record Insertion(JobText text, JobTree tree, int number) {
    /** Two radii nearer than this are one: far below what any turner measures. */
    private static final double SAME_MM = 1e-6;

    Optional<Problem> beside(MemberKind kind, boolean after) {
        Proportions room = new Proportions(text.job(), number);
        Optional<Length> length = given(room.usual(kind));
        if (length.isEmpty()) {
            return Optional.of(new Problem(
                    placed(number).where(),
                    "has no length to give to another",
                    "take longer stock, or shorten a member"));
        }
        put(after ? number : number - 1, kind, room.beside(length.orElseThrow(), after));
        return Optional.empty();
    }

    Optional<Problem> at(MemberKind kind, Length place) {
        PlacedMember held = placed(number);
        Length wanted = new Proportions(text.job(), number).usual(kind);
        Length half = Room.tidy(held.member().length().times(0.5), units());
        wanted = half.compareTo(wanted) < 0 ? half : wanted;
        Length within = place.minus(held.start());
        Length before = within.minus(wanted.times(0.5));
        Length head = before.isPositive() ? Room.tidy(before, units()) : Length.ZERO;
        Length tail = held.member().length().minus(head).minus(wanted);
        if (!head.isPositive() || !tail.isPositive() || !isEven(held)) {
            boolean after = within.minus(held.member().length().times(0.5)).isPositive();
            return beside(kind, after);
        }
        part(held, head, wanted, tail, kind);
        return Optional.empty();
    }

    /** Whether it runs straight from one end to the other and is no more than that: either half is a member of its own kind. */
    private static boolean isEven(PlacedMember placed) {
        Member member = placed.member();
        Outline outline = placed.outline();
        Length middle = outline.start().plus(outline.length().times(0.5));
        double straight = (outline.startRadius().mm() + outline.endRadius().mm()) / 2;
        return member.enters().isEmpty()
                && !member.kind().isNarrow()
                && outline.segments().size() == 1
                && member.crests().isEmpty()
                && Math.abs(outline.radiusAt(middle).mm() - straight) < SAME_MM
                && MemberFields.hasLength(member.kind());
    }

    private void part(PlacedMember held, Length head, Length wanted, Length tail, MemberKind kind) {
        Outline outline = held.outline();
        Length first = diameter(outline, held.start().plus(head));
        Length second = diameter(outline, held.start().plus(head).plus(wanted));
        ObjectNode old = tree.member(number);
        ObjectNode last = old.deepCopy();
        shorten(old, held, new Room(head, outline.startRadius().times(2), first, stock(), units()));
        shorten(last, held, new Room(tail, second, outline.endRadius().times(2), stock(), units()));
        tree.members().insert(number, last);
        StretchNumbers.change(tree, each -> each >= number ? each + 1 : each);
        put(number, kind, new Room(wanted, first, second, stock(), units()));
    }

    /** What goes from end to end takes its new ends; a size that was typed stays to the letter where it says the same. */
    private void shorten(ObjectNode node, PlacedMember held, Room room) {
        boolean tapers = !held.outline().startRadius().equals(held.outline().endRadius());
        Member member = held.member();
        MemberFields.length(node, member, room.length(), units());
        if (tapers && member.section() == Section.ROUND) {
            ObjectNode made = MemberFields.blank(member.kind(), room);
            for (MemberKey key : member.kind().keys()) {
                if (!key.name().equals(MemberKey.LENGTH) && made.has(key.name())) {
                    node.set(key.name(), made.get(key.name()));
                }
            }
        }
    }

    private static Length diameter(Outline outline, Length place) {
        return outline.radiusAt(place).times(2);
    }

    private void put(int at, MemberKind kind, Room room) {
        tree.members().insert(at, MemberFields.blank(kind, room));
        StretchNumbers.change(tree, each -> each >= at ? each + 1 : each);
    }

    /** Takes so much out of the blank; nothing where neither it nor a member has that much, and then the reader says that the run is too long. */
    void giveTo(Length length) {
        PlacedMember giver = giver();
        Length left = giver.member().length().minus(length);
        if (free().compareTo(length) < 0 && left.isPositive()) {
            take(giver, left);
        }
    }

    /** What a new member gets of the length it is wanted to have; empty when nobody has any. */
    private Optional<Length> given(Length wanted) {
        if (free().compareTo(wanted) >= 0) {
            return Optional.of(wanted);
        }
        PlacedMember giver = giver();
        Length half = Room.tidy(giver.member().length().times(0.5), units());
        Length length = half.compareTo(wanted) < 0 ? half : wanted;
        Length left = giver.member().length().minus(length);
        if (!left.isPositive()) {
            return Optional.empty();
        }
        take(giver, left);
        return Optional.of(length);
    }

    private void take(PlacedMember giver, Length left) {
        MemberFields.length(tree.member(giver.number()), giver.member(), left, units());
    }

    /** The longest member, of equal ones the nearest: it misses the length least, and details keep theirs. */
    private PlacedMember giver() {
        List<PlacedMember> run = text.job().pattern().placed();
        return run.stream()
                .max(Comparator.<PlacedMember>comparingDouble(
                                each -> each.member().length().mm())
                        .thenComparing(each -> -Math.abs(each.number() - number)))
                .orElseThrow();
    }

    private Length free() {
        return new Proportions(text.job(), number).free();
    }

    private PlacedMember placed(int each) {
        return text.job().pattern().placed().get(each - 1);
    }

    private Length stock() {
        return text.job().pattern().stock().size();
    }

    private UnitSystem units() {
        return text.job().units();
    }
}
