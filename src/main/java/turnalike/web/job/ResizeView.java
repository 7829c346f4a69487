package turnalike.web.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.drawing.piece.BeforeAfter;
import turnalike.job.Job;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.pattern.Member;
import turnalike.pattern.PlacedMember;
import turnalike.solid.Solid;
import turnalike.units.Length;
import turnalike.web.kit.JobAddress;

/**
 * A pattern to be scaled, stretched or mirrored, beside the one before.
 *
 * @param kept the job
 * @param before its text when its pattern was last another; empty where it never was
 */
public record ResizeView(KeptJob kept, Optional<JobText> before) {
    private static final Length WIDTH = Length.ofMm(200);
    private static final Length TALLEST = Length.ofMm(40);

    /**
     * One figure of both patterns.
     *
     * @param name what it is
     * @param was before
     * @param is now
     */
    public record Row(String name, String was, String is) {}

    public String address() {
        return JobAddress.address(kept.id());
    }

    public String title() {
        return kept.text().job().title();
    }

    public int version() {
        return kept.times().steps();
    }

    public List<PlacedMember> run() {
        return kept.text().job().pattern().placed();
    }

    /** The piece's length as it would be typed. */
    public String length() {
        Job job = kept.text().job();
        return job.pattern().length().format(job.units());
    }

    /** Whether a member is offered as one that may grow: no tenon, and longer than a fair share of the piece. */
    public boolean isLong(PlacedMember placed) {
        return !placed.member().lengthInHole().isPositive()
                && placed.member().length().mm() * run().size()
                        > kept.text().job().pattern().length().mm();
    }

    public String lengthOf(PlacedMember placed) {
        return placed.member().length().format(kept.text().job().units());
    }

    /** Both patterns over one another. */
    public String picture() {
        return before.map(text -> BeforeAfter.svg(
                                text.job().pattern(), kept.text().job().pattern(), WIDTH, TALLEST)
                        .inline())
                .orElse("");
    }

    /** What became of the whole, then of each member that differs, where the run has as many as it had. */
    public List<Row> rows() {
        return before.map(text -> rows(text.job(), kept.text().job())).orElse(List.of());
    }

    private static List<Row> rows(Job was, Job is) {
        List<Row> out = new ArrayList<>();
        out.add(new Row(
                "length",
                was.pattern().length().format(is.units()),
                is.pattern().length().format(is.units())));
        out.add(new Row("thickest", thickest(was, is), thickest(is, is)));
        out.add(new Row("weight as drawn", weight(was), weight(is)));
        List<PlacedMember> before = was.pattern().placed();
        List<PlacedMember> after = is.pattern().placed();
        if (before.size() != after.size()) {
            out.add(new Row("members", String.valueOf(before.size()), String.valueOf(after.size())));
            return out;
        }
        for (int i = 0; i < after.size(); i++) {
            if (!before.get(i).member().equals(after.get(i).member())) {
                out.add(new Row(
                        after.get(i).where(),
                        sizes(before.get(i).member(), is),
                        sizes(after.get(i).member(), is)));
            }
        }
        return out;
    }

    private static String thickest(Job of, Job shown) {
        return of.pattern().outline().largestRadius().times(2).format(shown.units());
    }

    private static String weight(Job job) {
        return job.tolerances()
                .weighing()
                .large(Solid.of(job.pattern().outline(), job.wood().density()).mass());
    }

    private static String sizes(Member member, Job job) {
        List<String> out = new ArrayList<>();
        out.add(member.kind().word() + " " + member.length().format(job.units()));
        member.sizes().lengths().forEach((key, size) -> {
            if (!key.equals("length") && size.isPositive()) {
                out.add(key + " " + size.format(job.units()));
            }
        });
        return String.join(", ", out);
    }
}
