package turnalike.job.edit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import turnalike.job.kept.JobText;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKey;
import turnalike.pattern.MemberKind;
import turnalike.pattern.PlacedMember;
import turnalike.units.Article;
import turnalike.units.Length;
import turnalike.units.Problem;

/**
 * An edit of one member.
 *
 * @param number of the member, from 1; one that is not there is told when the edit is made
 * @param deed what is done to it
 */
public record MemberEdit(int number, Deed deed) implements JobEdit {
    /** What can be done to a member. */
    public sealed interface Deed permits Insert, InsertAt, Move, Copy, Mirror, Remove, Turn, Sizes, Boundary {
        /** {@return what is done, in the user's words, before the member's name: {@code insert a bead after}} */
        String words();
    }

    /**
     * A new member before or after it. Its length comes out of the blank beyond the run; where the run fills its blank, out of the run's
     * longest member, which gives up to half of its own.
     *
     * @param kind of the new member
     * @param after whether it comes on the side of the far end
     */
    public record Insert(MemberKind kind, boolean after) implements Deed {
        @Override
        public String words() {
            return "insert %s %s".formatted(Article.with(kind.word()), after ? "after" : "before");
        }
    }

    /**
     * A new member at a place of the piece. A plain or evenly tapered member is parted there and gives the new one its room, so that
     * nothing else moves; beside any other the new one stands at the nearer end.
     *
     * @param kind of the new member
     * @param place of its middle, from the head end
     */
    public record InsertAt(MemberKind kind, Length place) implements Deed {
        @Override
        public String words() {
            return "insert %s in".formatted(Article.with(kind.word()));
        }
    }

    /**
     * To another place in the run.
     *
     * @param places so many towards the far end, or towards the datum end when below zero; not beyond either
     */
    public record Move(int places) implements Deed {
        @Override
        public String words() {
            return "move";
        }
    }

    /** The same again right after it. */
    public record Copy() implements Deed {
        @Override
        public String words() {
            return "copy";
        }
    }

    /** Turned end for end in its place. */
    public record Mirror() implements Deed {
        @Override
        public String words() {
            return "mirror";
        }
    }

    /** Taken out of the run; refused for the only member left. */
    public record Remove() implements Deed {
        @Override
        public String words() {
            return "remove";
        }
    }

    /**
     * Made another kind of the same length, with that kind's own usual sizes.
     *
     * @param kind from now on
     */
    public record Turn(MemberKind kind) implements Deed {
        @Override
        public String words() {
            return "make %s of".formatted(Article.with(kind.word()));
        }
    }

    /**
     * Some of its fields set as typed; an empty one is taken out.
     *
     * @param values by key; {@code points} with a pair a line, {@code by_eye} true or empty
     */
    public record Sizes(Map<String, String> values) implements Deed {
        public Sizes {
            values = Map.copyOf(values);
        }

        @Override
        public String words() {
            return "change " + String.join(", ", new TreeMap<>(values).keySet()) + " of";
        }
    }

    /**
     * Its far boundary moved: what it gains the next member gives, so that everything beyond stays where it is.
     *
     * @param length the member's new length, as typed
     */
    public record Boundary(String length) implements Deed {
        @Override
        public String words() {
            return "move the end of";
        }
    }

    @Override
    public String what(JobText before) {
        if (deed instanceof Sizes sizes) {
            return SaidChange.ofMember(number, sizes.values(), before);
        } else if (deed instanceof Boundary boundary) {
            return SaidChange.ofEnd(number, boundary.length(), before);
        } else if (deed instanceof Move move) {
            int last = before.job().pattern().members().size();
            int to = Math.max(1, Math.min(last, number + move.places()));
            return "move %s to place %d".formatted(SaidChange.named(before, number), to);
        }
        return deed.words() + " " + SaidChange.named(before, number);
    }

    @Override
    public JobEdit narrowed(JobText base) {
        boolean there = number >= 1 && number <= base.job().pattern().members().size();
        return there && deed instanceof Sizes sizes
                ? new MemberEdit(
                        number, new Sizes(TypedFields.changed(sizes.values(), TypedFields.member(base, number))))
                : this;
    }

    @Override
    public JobText.Read on(JobText text) {
        int count = text.job().pattern().members().size();
        if (number < 1 || number > count) {
            return refused(new Problem(
                    "member " + number, "is not there, the run has %d".formatted(count), "look at the run again"));
        }
        JobTree tree = JobTree.of(text);
        Optional<Problem> problem = new Hand(text, tree, number).does(deed);
        return problem.map(MemberEdit::refused).orElseGet(tree::read);
    }

    static JobText.Read refused(Problem problem) {
        return new JobText.Read(Optional.empty(), List.of(problem));
    }

    /** Does the deed to the tree. */
    private record Hand(JobText text, JobTree tree, int number) {
        Optional<Problem> does(Deed deed) {
            ArrayNode run = tree.members();
            if (deed instanceof Insert insert) {
                return new Insertion(text, tree, number).beside(insert.kind(), insert.after());
            } else if (deed instanceof InsertAt insert) {
                return new Insertion(text, tree, number).at(insert.kind(), insert.place());
            } else if (deed instanceof Turn turn) {
                return turn(turn.kind());
            } else if (deed instanceof Sizes sizes) {
                MemberFields.set(tree.member(number), sizes.values());
            } else if (deed instanceof Boundary boundary) {
                return boundary(boundary.length());
            } else if (deed instanceof Move move) {
                int from = number - 1;
                int to = Math.max(0, Math.min(run.size() - 1, from + move.places()));
                run.insert(to, run.remove(from));
                StretchNumbers.change(tree, at -> at == from ? to : moved(at, from, to));
            } else if (deed instanceof Copy) {
                new Insertion(text, tree, number).giveTo(member().length());
                run.insert(number, tree.member(number).deepCopy());
                StretchNumbers.change(tree, at -> at >= number ? at + 1 : at);
            } else if (deed instanceof Mirror) {
                MemberFields.mirror(tree.member(number), member(), text.job().units());
            } else if (run.size() == 1) {
                return Optional.of(
                        new Problem(placed().where(), "is the only member left", "make another kind of it instead"));
            } else if (StretchNumbers.name(tree, number - 1)) {
                return Optional.of(new Problem(
                        placed().where(),
                        "is the member by which the row's lengths differ",
                        "let the frame's lengths name another, or take them out"));
            } else {
                run.remove(number - 1);
                StretchNumbers.change(tree, at -> at >= number ? at - 1 : at);
            }
            return Optional.empty();
        }

        /** Where a member stands after another went from one place to another. */
        private static int moved(int at, int from, int to) {
            int gone = at > from ? at - 1 : at;
            return gone >= to ? gone + 1 : gone;
        }

        private PlacedMember placed() {
            return text.job().pattern().placed().get(number - 1);
        }

        private Member member() {
            return placed().member();
        }

        private Optional<Problem> turn(MemberKind kind) {
            ObjectNode old = tree.member(number);
            ObjectNode made = MemberFields.blank(kind, new Proportions(text.job(), number).within());
            for (String kept : List.of(MemberKey.NAME, MemberKey.BY_EYE, MemberKey.LENGTH)) {
                if (old.has(kept) && (!kept.equals(MemberKey.LENGTH) || MemberFields.hasLength(kind))) {
                    made.set(kept, old.get(kept));
                }
            }
            tree.members().set(number - 1, made);
            return Optional.empty();
        }

        private Optional<Problem> boundary(String length) {
            return Length.parse(length, text.job().units())
                    .fold(
                            this::boundary,
                            (what, mend) -> Optional.of(new Problem(placed().where() + ": length", what, mend)));
        }

        private Optional<Problem> boundary(Length length) {
            List<PlacedMember> run = text.job().pattern().placed();
            MemberFields.length(
                    tree.member(number), member(), length, text.job().units());
            if (number < run.size()) {
                Member next = run.get(number).member();
                Length left = next.length().plus(member().length()).minus(length);
                if (!left.isPositive()) {
                    return Optional.of(new Problem(
                            run.get(number).where(), "would have no length left", "move the boundary less far"));
                }
                MemberFields.length(
                        tree.member(number + 1), next, left, text.job().units());
            }
            return Optional.empty();
        }
    }
}
