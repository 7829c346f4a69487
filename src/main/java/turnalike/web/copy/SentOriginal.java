package turnalike.web.copy;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.job.original.OriginalKind;
import turnalike.job.original.OriginalTrace;
import turnalike.job.original.OriginalWish;
import turnalike.trace.drawn.DrawnOutline;
import turnalike.units.Problem;

/** An original as it was sent, with what was said of it. Its bytes may be anything. */
final class SentOriginal {
    private final String name;
    private final OriginalKind kind;
    private final byte[] bytes;
    private final OriginalWish wish;

    SentOriginal(String name, OriginalKind kind, byte[] bytes, OriginalWish wish) {
        this.name = name;
        this.kind = kind;
        this.bytes = bytes;
        this.wish = wish;
    }

    SentOriginal with(OriginalWish other) {
        return new SentOriginal(name, kind, bytes, other);
    }

    String name() {
        return name;
    }

    OriginalKind kind() {
        return kind;
    }

    boolean isPhotograph() {
        return kind == OriginalKind.PHOTOGRAPH;
    }

    OriginalWish wish() {
        return wish;
    }

    byte[] bytes() {
        return bytes;
    }

    OriginalTrace trace(Effort effort) {
        if (isPhotograph()) {
            return OriginalTrace.photograph(bytes, wish, effort);
        }
        Optional<String> text = text();
        if (text.isEmpty()) {
            Problem problem =
                    new Problem(name, "is no plain text", "save a table as CSV and a drawing as SVG or DXF, in UTF-8");
            return new OriginalTrace(Optional.empty(), Optional.empty(), List.of(problem));
        }
        return switch (kind) {
            case SVG -> OriginalTrace.drawing(text.get(), DrawnOutline.Format.SVG, wish);
            case DXF -> OriginalTrace.drawing(text.get(), DrawnOutline.Format.DXF, wish);
            default -> OriginalTrace.table(text.get(), wish);
        };
    }

    private Optional<String> text() {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.indexOf('\0') < 0 ? Optional.of(text) : Optional.empty();
        } catch (CharacterCodingException notText) {
            return Optional.empty();
        }
    }
}
