package turnalike.job.edit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import turnalike.job.fields.MemberJson;
import turnalike.job.kept.JobText;
import turnalike.outline.Section;
import turnalike.pattern.Stock;
import turnalike.trace.TracedRun;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * A job begun from a traced original: its members, and for all that an original does not tell (the wood, how many, the blank) something to
 * start from.
 */
public final class TracedJob {
    /** Left for turning to round, and for parting off; common practice, no source. */
    private static final Length ROUNDING = Length.ofMm(2);

    private static final Length TRIMMING = Length.ofMm(20);

    private TracedJob() {}

    /**
     * {@return the job's text, which reads as a job; or what is wrong with what was found, such as a run longer than any job holds}
     *
     * @param run the members found
     * @param units the job's
     * @param title the job's
     */
    public static JobText.Read of(TracedRun run, UnitSystem units, String title) {
        JobTree tree = JobTree.of(NewJob.in(units));
        tree.root().put("title", title);
        ObjectNode pattern = tree.pattern();
        pattern.put("name", title);
        boolean square = run.run().stream().anyMatch(each -> each.section() == Section.SQUARE);
        ObjectNode stock = (ObjectNode) pattern.get("stock");
        stock.set("size", JobTree.number(spelled(size(run, units, square), units)));
        stock.set("length", JobTree.number(spelled(up(run.outline().length().plus(TRIMMING), units), units)));
        pattern.set("members", MemberJson.of(run.run(), length -> JobTree.number(spelled(length, units))));
        return tree.read();
    }

    private static Length size(TracedRun run, UnitSystem units, boolean square) {
        Length largest = run.outline().largestRadius().times(2);
        // A square that was left stands as thick as its blank; what was turned came out of something thicker.
        return square ? up(largest, units) : up(largest.plus(ROUNDING), units);
    }

    /** To a whole millimetre or sixteenth of an inch, never down. */
    private static Length up(Length length, UnitSystem units) {
        Length step = units == UnitSystem.INCH ? Length.ofInches(1 / 16.0) : Length.ofMm(1);
        return step.times(Math.ceil(length.mm() / step.mm() - 1e-9));
    }

    private static String spelled(Length length, UnitSystem units) {
        return LengthSpelling.of(length, units);
    }

    /**
     * {@return the job's text with these members in place of its own, its blank made larger where they need it; or what is wrong with that}
     *
     * @param before the job's text
     * @param run the members found
     */
    public static JobText.Read into(JobText before, TracedRun run) {
        JobTree tree = JobTree.of(before);
        UnitSystem units = before.job().units();
        tree.pattern().set("members", MemberJson.of(run.run(), length -> JobTree.number(spelled(length, units))));
        Stock had = before.job().pattern().stock();
        ObjectNode stock = (ObjectNode) tree.pattern().get("stock");
        boolean square = run.run().stream().anyMatch(each -> each.section() == Section.SQUARE);
        if (had.size().compareTo(run.outline().largestRadius().times(2)) < 0) {
            stock.set("size", JobTree.number(spelled(size(run, units, square), units)));
        }
        if (had.length().compareTo(run.outline().length()) < 0) {
            stock.set("length", JobTree.number(spelled(up(run.outline().length().plus(TRIMMING), units), units)));
        }
        return tree.read();
    }
}
