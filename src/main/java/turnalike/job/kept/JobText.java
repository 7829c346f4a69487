package turnalike.job.kept;

import java.util.List;
import java.util.Optional;
import turnalike.job.Job;
import turnalike.job.read.JobReader;
import turnalike.units.Problem;

/** The text of a job file that can be read as a {@link Job}, kept to the letter as it was given. Two are equal when their letters are. */
public final class JobText {
    private final String text;
    private final Job job;

    private JobText(String text, Job job) {
        this.text = text;
        this.job = job;
    }

    /**
     * What came of reading: the text, or every problem in it.
     *
     * @param text empty when anything is wrong with it
     * @param problems everything wrong, in order; none beside a text
     */
    public record Read(Optional<JobText> text, List<Problem> problems) {
        public Read {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Takes what {@link JobReader} takes and refuses what it refuses.
     *
     * @param text of a job file
     * @return the same text, to the letter, or the problems in it
     */
    public static Read read(String text) {
        Job.Read read = JobReader.read(text);
        return new Read(read.job().map(job -> new JobText(text, job)), read.problems());
    }

    /**
     * {@return the title that a text gives, found without reading the rest of it; empty when the text is no JSON object}
     *
     * @param text of a job file that was taken once
     */
    public static Optional<String> titleIn(String text) {
        try {
            return Optional.of(KeptJson.object(text).path("title").asText(JobReader.UNTITLED));
        } catch (IllegalArgumentException notJson) {
            return Optional.empty();
        }
    }

    /** {@return the text, to the letter} */
    public String text() {
        return text;
    }

    /** {@return what it says} */
    public Job job() {
        return job;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JobText that && that.text.equals(text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }
}
