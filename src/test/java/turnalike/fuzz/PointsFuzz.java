package turnalike.fuzz;

import java.nio.charset.StandardCharsets;
import turnalike.trace.Profile;
import turnalike.trace.Snap;
import turnalike.trace.TracedRun;
import turnalike.trace.fit.MemberFit;
import turnalike.trace.table.PointTable;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Whatever a table of measured points holds is an original or problems; members found in a short one are as long as it is. */
public final class PointsFuzz {
    private static final Length ERROR = Length.ofMm(0.2);
    /** Finding members takes far longer than reading: only of tables so short. */
    private static final int MOST_FITTED = 12;

    private static final double SLACK_MM = 0.05;

    private PointsFuzz() {}

    /** The fuzzer's way in. */
    public static void fuzzerTestOneInput(byte[] input) {
        String text = new String(input, StandardCharsets.UTF_8);
        for (UnitSystem units : UnitSystem.values()) {
            PointTable.Read read = PointTable.read(text, units, ERROR);
            Fuzz.readable(read.problems());
            Fuzz.require(read.original().isPresent() == read.problems().isEmpty(), "neither an original nor problems");
            read.original().ifPresent(original -> {
                Profile profile = original.profile();
                if (profile.stations().size() <= MOST_FITTED) {
                    TracedRun run = MemberFit.of(original, Snap.NONE);
                    double off = run.outline().length().minus(profile.length()).mm();
                    Fuzz.require(
                            Math.abs(off) < SLACK_MM, "members %s mm longer than what they explain".formatted(off));
                }
            });
        }
    }
}
