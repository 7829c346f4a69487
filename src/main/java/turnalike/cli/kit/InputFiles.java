package turnalike.cli.kit;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import turnalike.job.Job;
import turnalike.job.read.JobReader;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.units.Problem;

/** Files in, by name; whatever is wrong names the file first. */
public final class InputFiles {
    /** Far above any honest job or pieces file; a picture given by mistake is refused before it is read. */
    private static final long MOST_BYTES = 16L << 20;

    private InputFiles() {}

    public static Job job(Path path) {
        Job.Read read = JobReader.read(text(path));
        return read.job().orElseThrow(() -> in(path, read.problems()));
    }

    public static PiecesFile.Read pieces(Path path, Job job) {
        PiecesFile.Read read = PiecesFile.parse(text(path), job.units());
        if (!read.problems().isEmpty()) {
            throw in(path, read.problems());
        }
        return read;
    }

    /** The pieces that a match can use; problems name the file. */
    public static UserError in(Path path, List<Problem> problems) {
        String file = String.valueOf(path.getFileName());
        return new UserError(problems.stream()
                .map(problem -> new Problem(file + ": " + problem.where(), problem.what(), problem.mend()))
                .toList());
    }

    public static String text(Path path) {
        String name = path.toString();
        try {
            if (Files.isDirectory(path)) {
                throw UserError.of(name, "is a folder", "name the file in it");
            }
            if (!Files.exists(path)) {
                throw UserError.of(name, "no such file", "check the name and the folder you are in");
            }
            if (Files.size(path) > MOST_BYTES) {
                throw UserError.of(name, "is larger than 16 MiB", "check that it is the file you mean");
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(Files.readAllBytes(path)))
                    .toString();
        } catch (CharacterCodingException notUtf8) {
            throw UserError.of(name, "is not UTF-8 text", "save it as UTF-8");
        } catch (IOException unreadable) {
            throw UserError.of(name, "cannot be read (" + reason(unreadable) + ")", "check that you may read it");
        }
    }

    static String reason(IOException trouble) {
        return trouble.getClass()
                .getSimpleName()
                .replace("Exception", "")
                .replaceAll("([a-z])([A-Z])", "$1 $2")
                .toLowerCase(java.util.Locale.ROOT);
    }

    /** Only the labels matter to some callers; here they learn them in the file's order. */
    public static List<String> labels(List<Piece> pieces) {
        return pieces.stream().map(Piece::label).toList();
    }
}
