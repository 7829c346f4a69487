package turnalike.cli.kit;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where a fault of ours is written down, so that it can be reported. */
public final class FaultLog {
    private FaultLog() {}

    /** Writes it into a file of its own and names the file; where that cannot be done, the fault in words. */
    public static String write(Exception trouble) {
        StringWriter text = new StringWriter();
        trouble.printStackTrace(new PrintWriter(text));
        try {
            Path file = Files.createTempFile("turnalike-", ".log");
            Files.writeString(file, text.toString());
            return file.toString();
        } catch (IOException noLog) {
            return "these words: " + trouble;
        }
    }
}
