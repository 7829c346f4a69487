package turnalike.job.edit;

import java.util.List;
import turnalike.job.Job;
import turnalike.pattern.MemberKind;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Room;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** The room in and beside one member of the run: what a new member there starts from. */
record Proportions(Job job, int number) {
    private PlacedMember placed() {
        return job.pattern().placed().get(number - 1);
    }

    /** The length a new member is given where there is room: 3/4 in or 20 mm, a narrow kind a third of it; common practice, no source. */
    Length usual(MemberKind kind) {
        Length usual = job.units() == UnitSystem.INCH ? Length.ofInches(0.75) : Length.ofMm(20);
        return kind.isNarrow() ? Room.tidy(usual.times(1 / 3.0), job.units()) : usual;
    }

    /** What the stock is longer than the run. */
    Length free() {
        return job.pattern().stock().length().minus(job.pattern().length());
    }

    Room beside(Length length, boolean after) {
        List<PlacedMember> run = job.pattern().placed();
        int left = after ? number - 1 : number - 2;
        Length before = left >= 0 ? ending(run.get(left)) : starting(run.get(0));
        Length next = left + 1 < run.size() ? starting(run.get(left + 1)) : before;
        return room(length, before, next);
    }

    Room within() {
        return room(placed().member().length(), starting(placed()), ending(placed()));
    }

    private Room room(Length length, Length before, Length after) {
        return new Room(length, before, after, job.pattern().stock().size(), job.units());
    }

    private static Length starting(PlacedMember placed) {
        return placed.outline().startRadius().times(2);
    }

    private static Length ending(PlacedMember placed) {
        return placed.outline().endRadius().times(2);
    }
}
