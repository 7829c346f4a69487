package turnalike.web.copy;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import turnalike.job.original.OriginalKind;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** An original out of the form that was sent: a file that was chosen, a picture that was taken, or a table that was pasted. */
final class OriginalUpload {
    private static final int MOST_TABLE = 1 << 20;
    private static final int MOST_DRAWING = 8 << 20;
    private static final int LONGEST_NAME = 60;

    /** Pictures of other kinds: what reads photographs says in its own words that it does not read these. */
    private static final Set<String> PICTURES = Set.of("heic", "heif", "avif", "webp", "gif", "bmp", "tif", "tiff");

    private OriginalUpload() {}

    /** What is sent, or a refusal in words. */
    static SentOriginal read(Context ctx, OriginalForm form, Optional<Length> asPattern) {
        Optional<UploadedFile> file =
                ctx.uploadedFiles().stream().filter(each -> each.size() > 0).findFirst();
        if (file.isPresent() && !form.points().isBlank()) {
            throw Refusal.of(422, "original", "a file and a table were both given", "give one of them");
        }
        if (file.isEmpty() && form.points().isBlank()) {
            throw Refusal.of(422, "original", "none was given", "choose a file, take a picture or paste a table");
        }
        String name = file.map(each -> plain(each.filename())).orElse("pasted table");
        byte[] bytes =
                file.map(OriginalUpload::bytes).orElseGet(() -> form.points().getBytes(StandardCharsets.UTF_8));
        OriginalKind kind = file.isEmpty() ? OriginalKind.TABLE : kind(name, bytes);
        limit(kind, bytes.length);
        if (kind == OriginalKind.TABLE) {
            bytes = RequestInput.tableText(bytes, name).getBytes(StandardCharsets.UTF_8);
        }
        List<Problem> problems = new ArrayList<>();
        SentOriginal sent = new SentOriginal(name, kind, bytes, form.wish(kind, asPattern, problems));
        if (!problems.isEmpty()) {
            throw new Refusal(422, problems);
        }
        return sent;
    }

    private static OriginalKind kind(String name, byte[] bytes) {
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        boolean picture = PICTURES.contains(ending) || isPicture(bytes);
        return OriginalKind.find(name)
                .or(() -> picture ? Optional.of(OriginalKind.PHOTOGRAPH) : Optional.empty())
                .orElseThrow(() -> Refusal.of(
                        422,
                        name,
                        "is neither a photograph (.jpg, .png) nor a table (.csv, .xlsx) nor a drawing (.svg, .dxf) by its name",
                        "save it as one of these"));
    }

    /** By how JPEG and PNG files begin: a telephone may send a picture without any ending. */
    private static boolean isPicture(byte[] bytes) {
        boolean jpeg = bytes.length > 2 && bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xD8;
        boolean png = bytes.length > 4 && bytes[0] == (byte) 0x89 && bytes[1] == 'P' && bytes[2] == 'N';
        return jpeg || png;
    }

    private static void limit(OriginalKind kind, int bytes) {
        if (kind == OriginalKind.TABLE && bytes > MOST_TABLE) {
            throw Refusal.of(413, "table", "is larger than a megabyte", "check that it is the file you mean");
        }
        if ((kind == OriginalKind.SVG || kind == OriginalKind.DXF) && bytes > MOST_DRAWING) {
            throw Refusal.of(413, "drawing", "is larger than 8 megabytes", "save the outline alone");
        }
    }

    private static byte[] bytes(UploadedFile file) {
        try (InputStream in = file.content()) {
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The name alone, in one line of what can be written. */
    private static String plain(String filename) {
        String name = filename.substring(Math.max(filename.lastIndexOf('/'), filename.lastIndexOf('\\')) + 1);
        String clean = name.replaceAll("[\\p{Cntrl}\\p{Cs}\\p{Co}\\p{Cn}\\u2028\\u2029]", "")
                .strip();
        String few = clean.length() > LONGEST_NAME ? clean.substring(clean.length() - LONGEST_NAME) : clean;
        return few.isBlank() ? "original" : few;
    }
}
