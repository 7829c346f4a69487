package turnalike.fuzz;

import java.nio.charset.StandardCharsets;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.answer.PlanJson;
import turnalike.job.read.JobReader;

/** Whatever a job file holds is a job, which then can be planned for, or a list of problems. */
public final class JobFuzz {
    /** A plan takes a thousand times as long as reading the file, so only some of those that can be read are planned for. */
    private static final int PLANNED_ONE_OF = 50;

    private JobFuzz() {}

    /** The fuzzer's way in. */
    public static void fuzzerTestOneInput(byte[] input) {
        String text = new String(input, StandardCharsets.UTF_8);
        Job.Read read = JobReader.read(text);
        Fuzz.require(read.job().isPresent() == read.problems().isEmpty(), "a job with problems, or none without any");
        Fuzz.readable(read.problems());
        read.job().filter(job -> text.hashCode() % PLANNED_ONE_OF == 0).ifPresent(job -> {
            String json = PlanJson.print(Plan.of(job, () -> true));
            Fuzz.require(!json.contains("NaN") && !json.contains("Infinity"), "a figure that is none");
        });
    }
}
