package turnalike.job.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import turnalike.job.kept.JobText;
import turnalike.job.keys.KeyPaths;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKind;
import turnalike.units.Length;
import turnalike.units.Parsed;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/**
 * An edit made while looking at one text, carried over to the text that stands now because somebody else was quicker. What does not touch
 * the other's edits goes on as if made now; what does is told, and left to the person.
 *
 * @param edit what to do to the text that stands now; empty when there are problems
 * @param problems what was changed meanwhile, a problem each
 */
public record RebasedEdit(Optional<JobEdit> edit, List<Problem> problems) {
    private static final String MEND = "look at it as it is now, then do yours again";

    public RebasedEdit {
        problems = List.copyOf(problems);
    }

    /**
     * Carries the edit over; narrowed to what it really changes.
     *
     * @param edit made while looking at {@code seen}
     * @param seen the text the person saw
     * @param now the text that stands
     * @return the edit for the text that stands, or what was changed meanwhile
     */
    public static RebasedEdit over(JobEdit edit, JobText seen, JobText now) {
        JobEdit narrow = edit.narrowed(seen);
        if (seen.equals(now)) {
            return done(narrow);
        }
        JobText was = inUnitsOf(now, seen);
        if (narrow instanceof MemberEdit member) {
            return member(spelled(member, seen, now), was, now);
        } else if (narrow instanceof JobFields fields) {
            return fields(new JobFields(spelled(fields.values(), seen, now)), was, now);
        } else if (isOfWholeRun(narrow)
                && !JobTree.of(was).members().equals(JobTree.of(now).members())) {
            return refused(new Problem("pattern: members", "were changed meanwhile", MEND));
        } else if (narrow instanceof GoneBack) {
            return refused(new Problem("job", "was changed meanwhile", MEND));
        }
        return done(narrow);
    }

    private static boolean isOfWholeRun(JobEdit edit) {
        return edit instanceof RunMirrored
                || edit instanceof NudgeEdit
                || edit instanceof ScaleEdit
                || edit instanceof StretchEdit;
    }

    /** The text that was seen, spelled as it would be after a change of units alone, which is no change of any size. */
    static JobText inUnitsOf(JobText now, JobText seen) {
        UnitSystem units = now.job().units();
        return seen.job().units() == units
                ? seen
                : new UnitsChange(units).on(seen).text().orElse(seen);
    }

    /** A member that is not there is told later, when its number is looked up. */
    private static MemberEdit spelled(MemberEdit edit, JobText seen, JobText now) {
        List<Member> members = seen.job().pattern().members();
        boolean there = edit.number() >= 1 && edit.number() <= members.size();
        return there
                ? new MemberEdit(
                        edit.number(),
                        spelled(edit, members.get(edit.number() - 1).kind(), ownUnits(seen, now)))
                : edit;
    }

    private static RebasedEdit done(JobEdit edit) {
        return new RebasedEdit(Optional.of(edit), List.of());
    }

    private static RebasedEdit refused(Problem problem) {
        return new RebasedEdit(Optional.empty(), List.of(problem));
    }

    private static RebasedEdit member(MemberEdit edit, JobText seen, JobText now) {
        OptionalInt number = Alignment.of(
                        JobTree.of(seen).members(), JobTree.of(now).members())
                .find(edit.number());
        String where = edit.number() <= seen.job().pattern().members().size() && edit.number() >= 1
                ? seen.job().pattern().placed().get(edit.number() - 1).where()
                : "member " + edit.number();
        if (number.isEmpty()) {
            return refused(new Problem(where, "was taken out meanwhile, or cannot be told from its neighbours", MEND));
        }
        Map<String, String> had = TypedFields.member(seen, edit.number());
        Map<String, String> has = TypedFields.member(now, number.getAsInt());
        if (edit.deed() instanceof MemberEdit.Sizes sizes) {
            String here =
                    now.job().pattern().placed().get(number.getAsInt() - 1).where();
            List<Problem> problems = crossed(sizes.values(), had, has, here + ": ");
            return problems.isEmpty()
                    ? done(new MemberEdit(number.getAsInt(), new MemberEdit.Sizes(sizes.values())))
                    : new RebasedEdit(Optional.empty(), problems);
        }
        boolean rewrites = edit.deed() instanceof MemberEdit.Turn
                || edit.deed() instanceof MemberEdit.InsertAt
                || edit.deed() instanceof MemberEdit.Boundary
                || edit.deed() instanceof MemberEdit.Remove;
        if (rewrites && !had.equals(has)) {
            return refused(new Problem(where, "was changed meanwhile", MEND));
        }
        return done(new MemberEdit(number.getAsInt(), edit.deed()));
    }

    private static RebasedEdit fields(JobFields edit, JobText seen, JobText now) {
        Map<String, String> typed = edit.values();
        List<Problem> problems = crossed(typed, TypedFields.job(seen), TypedFields.job(now), "");
        return problems.isEmpty() ? done(edit) : new RebasedEdit(Optional.empty(), problems);
    }

    /** The fields that both changed, each to something else. */
    private static List<Problem> crossed(
            Map<String, String> typed, Map<String, String> had, Map<String, String> has, String where) {
        List<Problem> out = new ArrayList<>();
        typed.forEach((key, value) -> {
            String theirs = has.getOrDefault(key, "");
            boolean changed = !theirs.equals(had.getOrDefault(key, ""));
            if (changed && !theirs.equals(value.strip())) {
                String now =
                        theirs.isEmpty() ? "taken out" : "made '%s'".formatted(theirs.replaceAll("\\p{Cntrl}", " "));
                out.add(new Problem(where + key.replace(".", ": "), "was %s meanwhile".formatted(now), MEND));
            }
        });
        return out;
    }

    /** A bare length was typed in the units that were shown: where the job went over to others meanwhile, it is given its own. */
    private static UnaryOperator<String> ownUnits(JobText seen, JobText now) {
        UnitSystem units = seen.job().units();
        if (units == now.job().units()) {
            return UnaryOperator.identity();
        }
        return value -> {
            Parsed<Length> length = Length.parse(value, units);
            return length.isValue() && !length.equals(Length.parse(value, units.other()))
                    ? value.strip() + " " + units.symbol()
                    : value;
        };
    }

    private static Map<String, String> spelled(Map<String, String> typed, JobText seen, JobText now) {
        UnaryOperator<String> own = ownUnits(seen, now);
        Map<String, String> out = new LinkedHashMap<>(typed);
        out.replaceAll((path, value) -> ListFields.find(path)
                .map(list -> list.withLengths(value, own))
                .orElseGet(() -> isLength(path) ? own.apply(value) : value));
        return out;
    }

    private static boolean isLength(String path) {
        return KeyPaths.find(path).map(key -> key.type().isLength()).orElse(false);
    }

    private static MemberEdit.Deed spelled(MemberEdit edit, MemberKind kind, UnaryOperator<String> own) {
        if (edit.deed() instanceof MemberEdit.Boundary boundary) {
            return new MemberEdit.Boundary(own.apply(boundary.length()));
        }
        if (edit.deed() instanceof MemberEdit.Sizes sizes) {
            Map<String, String> out = new LinkedHashMap<>(sizes.values());
            out.replaceAll((key, value) -> MemberFields.withLengths(kind, key, value, own));
            return new MemberEdit.Sizes(out);
        }
        return edit.deed();
    }
}
