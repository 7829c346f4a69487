package turnalike.trace.drawn;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * One entity of a DXF file: what stands from its group code 0 up to the next.
 *
 * @param pairs in the file's order
 */
record DxfEntity(List<Pair> pairs) {
    private static final double TOO_LARGE = 1e9;

    /** A group code, its value and the line it stands on. */
    record Pair(int code, String value, int line) {
        double number() {
            double out = Double.parseDouble(value.strip());
            if (!(Math.abs(out) < TOO_LARGE)) {
                throw new NumberFormatException("too large");
            }
            return out;
        }
    }

    DxfEntity {
        pairs = List.copyOf(pairs);
    }

    /** {@code LINE}, {@code ARC}; empty where it begins with none. */
    String kind() {
        return pairs.isEmpty() || pairs.get(0).code() != 0
                ? ""
                : pairs.get(0).value().strip();
    }

    /** Where it begins. */
    OptionalInt line() {
        return pairs.stream().mapToInt(Pair::line).findFirst();
    }

    String layer() {
        return text(8).toUpperCase(Locale.ROOT);
    }

    /** Whether its plane is looked at from behind: its own x runs the other way. */
    boolean isFromBehind() {
        return value(230, 1) < 0;
    }

    /** The first value of that code; empty for none. */
    String text(int code) {
        return pairs.stream()
                .filter(each -> each.code() == code)
                .map(each -> each.value().strip())
                .findFirst()
                .orElse("");
    }

    double value(int code, double otherwise) {
        for (Pair each : pairs) {
            if (each.code() == code) {
                return each.number();
            }
        }
        return otherwise;
    }

    double[] all(int code) {
        return pairs.stream()
                .filter(each -> each.code() == code)
                .mapToDouble(Pair::number)
                .toArray();
    }
}
