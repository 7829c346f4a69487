package turnalike.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import turnalike.job.kept.Change;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.Subject;

/** A job given away, and the document of a single piece or photograph, read from anything. */
public final class KeptFuzz {
    private KeptFuzz() {}

    /** The fuzzer's way in; the first byte says what the rest is read as. */
    public static void fuzzerTestOneInput(byte[] input) {
        if (input.length == 0) {
            return;
        }
        String text = new String(input, 1, input.length - 1, StandardCharsets.UTF_8);
        Subject.Kind[] kinds = Subject.Kind.values();
        int kind = Math.floorMod(input[0] - '0', kinds.length + 1);
        if (kind == kinds.length) {
            given(text);
        } else {
            document(kinds[kind], text);
        }
    }

    private static void given(String text) {
        GivenJob.Read read = GivenJob.read(text);
        Fuzz.readable(read.problems());
        read.job().ifPresent(job -> {
            GivenJob again = GivenJob.read(job.format()).job().orElseThrow();
            Fuzz.require(again.equals(job), "a job changed by being given away");
        });
    }

    private static void document(Subject.Kind kind, String text) {
        try {
            Change.read(kind == Subject.Kind.JOB ? Subject.JOB : new Subject(kind, "1"), Optional.of(text));
        } catch (IllegalArgumentException damaged) {
            Fuzz.require(damaged.getMessage() != null, "damage that says nothing"); // as it is told of a damaged store
        }
    }
}
