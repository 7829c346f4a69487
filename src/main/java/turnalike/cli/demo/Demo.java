package turnalike.cli.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import turnalike.cli.kit.Deadline;
import turnalike.cli.kit.InputFiles;
import turnalike.cli.kit.OutputFolder;
import turnalike.cli.kit.PaperChoice;
import turnalike.cli.kit.WrittenFiles;
import turnalike.cli.match.MatchCommand;
import turnalike.cli.match.MatchSummary;
import turnalike.cli.pieces.ControlSheets;
import turnalike.cli.plan.PlanCommand;
import turnalike.cli.plan.PlanSummary;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.answer.MatchJson;
import turnalike.job.answer.PlanJson;
import turnalike.job.pieces.ColumnTargets;
import turnalike.job.pieces.ControlReport;
import turnalike.job.set.SetMatch;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.control.ChartConstants;
import turnalike.pieces.control.RuleChoice;

/** The shipped order, whose every word and weight is invented, taken through the whole main job. */
public final class Demo {
    private static final String JOB = "fair-wheel.job.json";
    private static final String PIECES = "fair-wheel-pieces.csv";

    private Demo() {}

    /** Writes everything into the folder and returns the one-screen summary. */
    public static String run(Path out, PaperChoice paper, Effort matching) {
        OutputFolder folder = new OutputFolder(out);
        String jobText = shipped(JOB);
        String piecesText = shipped(PIECES);
        folder.write(JOB, jobText);
        folder.write(PIECES, piecesText);
        // Read back from the folder: the demo goes the way a user's own files go.
        Job job = InputFiles.job(out.resolve(JOB));
        PiecesFile.Read pieces = InputFiles.pieces(out.resolve(PIECES), job);
        Plan plan = Plan.of(job, Deadline.inSeconds(5));
        SetMatch match = MatchCommand.match(job, pieces, out.resolve(PIECES), false, matching);
        folder.write("plan.json", PlanJson.print(plan));
        folder.write("match.json", MatchJson.print(match, ColumnTargets.questions(job, pieces)));
        PlanCommand.writeSheets(plan, paper, folder);
        MatchCommand.writeRecord(job, match, paper, folder);
        ControlReport weights = ControlReport.of(
                        Optional.of(job), pieces.pieces(), "mass_g", ChartConstants.PRINTED, RuleChoice.SELF_STARTING)
                .get();
        ControlSheets.write(weights, job.title() + ": " + weights.things(), paper, folder);
        return PlanSummary.text(plan) + "\n" + MatchSummary.text(match) + WrittenFiles.text(folder.written());
    }

    private static String shipped(String name) {
        try (InputStream in = Demo.class.getResourceAsStream("/turnalike/demo/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the demo's " + name + " is not on the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
