package turnalike.job.kept;

import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import turnalike.units.Problem;

/**
 * A whole job, carried away: everything that was ever done to it, in one readable file. {@link #read} and {@link #format} are inverses, to
 * the byte.
 *
 * @param id what the store knew it by
 * @param history every step from the first; steps that do not follow from each other are an {@link IllegalArgumentException}
 */
public record GivenJob(JobId id, List<Step> history) {
    public GivenJob {
        history = Replay.of(history).history();
        if (history.isEmpty()) {
            throw new IllegalArgumentException("a job has at least its first step");
        }
    }

    /**
     * What came of reading a file: the job, or what is wrong with the file.
     *
     * @param job empty when anything is wrong
     * @param problems the first thing wrong; none beside a job
     */
    public record Read(Optional<GivenJob> job, List<Problem> problems) {
        public Read {
            problems = List.copyOf(problems);
        }
    }

    /**
     * {@return whether the text says of itself that it is such a file, so that a job file can be told from it}
     *
     * @param text any text; one that is not JSON says no such thing
     */
    public static boolean claims(String text) {
        try {
            return GivenTree.FORMAT.equals(KeptJson.object(text).path("format").asText());
        } catch (IllegalArgumentException notJson) {
            return false;
        }
    }

    /**
     * Reads the file. A machine wrote it, so the first thing wrong is told and the rest is not searched.
     *
     * @param text as {@link #format} wrote it; keys in another order and numbers spelled otherwise make no difference
     * @return the job, or what is wrong
     */
    public static Read read(String text) {
        return GivenReader.read(text);
    }

    /** {@return the file's text: the job and its pieces as they stand, for people and other programs, then the history it follows from} */
    public String format() {
        StringWriter out = new StringWriter();
        GivenWriter writer = GivenWriter.begin(out, kept());
        history.forEach(step -> writer.step(StepText.of(step)));
        writer.end();
        return out.toString();
    }

    /** {@return the job as it stands after its history} */
    public KeptJob kept() {
        return Replay.of(history).kept(id);
    }

    /**
     * {@return whether this history is the other's or goes on from it}
     *
     * @param other the one that would be brought up to this
     */
    public boolean goesOnFrom(GivenJob other) {
        return history.size() >= other.history.size()
                && history.subList(0, other.history.size()).equals(other.history);
    }
}
