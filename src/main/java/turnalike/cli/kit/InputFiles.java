package turnalike.cli.kit;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import turnalike.job.Job;
import turnalike.job.read.JobReader;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.store.DiskTrouble;
import turnalike.units.Problem;
import turnalike.workbook.WorkbookTable;

/** Files in, by name; whatever is wrong names the file first. */
public final class InputFiles {
    /** Far above any honest job or pieces file; a picture given by mistake is refused before it is read. */
    private static final int MOST_MIB = 16;

    private static final int MOST_PICTURE_MIB = 64;

    private static final int PART = 1 << 20;

    private static final String SAVE_AS_TEXT =
            "save a table as .xlsx or as CSV in UTF-8, a job as plain text, and name that file";
    private static final Map<String, String> FIRST_BYTES = Map.of(
            "PK\u0003\u0004", "a spreadsheet's workbook or another zip file",
            "\u00d0\u00cf\u0011\u00e0", "a spreadsheet's older workbook (.xls)",
            "\u00ff\u00fe", "text in UTF-16",
            "\u00fe\u00ff", "text in UTF-16",
            "%PDF", "a PDF");

    /** Other kinds of drawing, by how they begin. */
    private static final Map<Pattern, String> DRAWINGS = Map.of(
            Pattern.compile("AC10\\d\\d\\x00"), "a DWG drawing",
            Pattern.compile("AutoCAD Binary DXF"), "a binary DXF drawing",
            Pattern.compile("\\x1f\\x8b"), "a compressed file, as a .svgz is");

    private InputFiles() {}

    public static Job job(Path path) {
        Job.Read read = JobReader.read(text(path));
        return read.job().orElseThrow(() -> in(path, read.problems()));
    }

    public static PiecesFile.Read pieces(Path path, Job job) {
        PiecesFile.Read read = PiecesFile.parse(table(path), job.units());
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

    /** A picture's bytes, whatever they are; only its size is asked. */
    public static byte[] picture(Path path) {
        return bytes(path, MOST_PICTURE_MIB, "save it as a JPEG of at most 50 megapixels");
    }

    /** A table as CSV text: the file's own, or the first sheet of a workbook. */
    public static String table(Path path) {
        return table(bytes(path, MOST_MIB, "check that it is the file you mean"), path);
    }

    /** The same of bytes that came by another way. */
    public static String table(byte[] bytes, Path path) {
        if (!WorkbookTable.isZip(bytes)) {
            return text(bytes, path);
        }
        String name = String.valueOf(path.getFileName());
        WorkbookTable.Read read = WorkbookTable.read(bytes, name);
        if (!read.problems().isEmpty()) {
            boolean named = read.problems().get(0).where().equals(name);
            throw named ? new UserError(read.problems()) : in(path, read.problems());
        }
        return read.text();
    }

    public static String text(Path path) {
        return text(bytes(path, MOST_MIB, "check that it is the file you mean"), path);
    }

    private static String text(byte[] bytes, Path path) {
        String name = path.toString();
        Optional<String> drawing = drawingOf(bytes);
        if (drawing.isPresent()) {
            throw UserError.of(
                    name,
                    "is " + drawing.get() + ", whatever its name",
                    "save it as plain SVG, or as DXF in text (ASCII)");
        }
        Optional<String> kind = kindOf(bytes);
        if (kind.isPresent()) {
            throw UserError.of(name, "is " + kind.get() + ", whatever its name", SAVE_AS_TEXT);
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException notUtf8) {
            throw UserError.of(name, "is not UTF-8 text", "save it as UTF-8");
        }
    }

    /** @param mend of a file that is larger than so many MiB */
    private static byte[] bytes(Path path, int mostMib, String mend) {
        String name = path.toString();
        try {
            if (Files.isDirectory(path)) {
                throw UserError.of(name, "is a folder", "name the file in it");
            }
            if (!Files.exists(path)) {
                throw UserError.of(name, "no such file", "check the name and the folder you are in");
            }
            if (!Files.isRegularFile(path) && !isOpenAlready(path)) {
                throw UserError.of(
                        name, "is a device or a pipe, not a file", "save what comes from it and name that file");
            }
            long most = (long) mostMib << 20;
            Optional<byte[]> bytes = Files.size(path) > most ? Optional.empty() : inParts(path, (int) most);
            return bytes.orElseThrow(() -> UserError.of(name, "is larger than %d MiB".formatted(mostMib), mend));
        } catch (IOException unreadable) {
            throw UserError.of(
                    name, "cannot be read (" + DiskTrouble.reason(unreadable) + ")", "check that you may read it");
        }
    }

    /** What the shell hands over: another command's output in place of a file. A pipe of its own may wait for ever. */
    private static boolean isOpenAlready(Path path) {
        Path at = path.toAbsolutePath().normalize();
        return at.startsWith("/dev/fd") || at.startsWith("/proc") || at.equals(Path.of("/dev/stdin"));
    }

    /**
     * Java reads a whole file at once through a copy of it beside the heap, and keeps that.
     *
     * @return empty where it holds more than the most, whatever size it tells
     */
    private static Optional<byte[]> inParts(Path path, int most) throws IOException {
        byte[] bytes = new byte[(int) Files.size(path)];
        int count = 0;
        try (InputStream in = Files.newInputStream(path)) {
            int read = 0;
            while (read >= 0 && count < bytes.length) {
                read = in.read(bytes, count, Math.min(PART, bytes.length - count));
                count += Math.max(0, read);
            }
            // A pipe says that it holds nothing.
            byte[] more = in.readNBytes(most - count + 1);
            if (count + more.length > most) {
                return Optional.empty();
            }
            if (more.length == 0 && count == bytes.length) {
                return Optional.of(bytes);
            }
            byte[] all = Arrays.copyOf(bytes, count + more.length);
            System.arraycopy(more, 0, all, count, more.length);
            return Optional.of(all);
        }
    }

    /** What a file is that is no text, by how it begins (the formats' own first bytes; from memory). */
    private static Optional<String> kindOf(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(4, bytes.length), StandardCharsets.ISO_8859_1);
        return FIRST_BYTES.entrySet().stream()
                .filter(each -> start.startsWith(each.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    private static Optional<String> drawingOf(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(32, bytes.length), StandardCharsets.ISO_8859_1);
        return DRAWINGS.entrySet().stream()
                .filter(each -> each.getKey().matcher(start).lookingAt())
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** Only the labels matter to some callers; here they learn them in the file's order. */
    public static List<String> labels(List<Piece> pieces) {
        return pieces.stream().map(Piece::label).toList();
    }
}
