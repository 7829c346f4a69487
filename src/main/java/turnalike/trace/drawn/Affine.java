package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** x′ = ax + cy + e, y′ = bx + dy + f: SVG's transforms. */
record Affine(double a, double b, double c, double d, double e, double f) {
    static final Affine NONE = new Affine(1, 0, 0, 1, 0, 0);

    private static final Pattern NUMBER = Pattern.compile("([0-9.eE+-]*[0-9.])([a-z]*)");
    /** What a style may write behind a number. */
    private static final Map<String, Double> UNITS = Map.of(
            "",
            1.0,
            "px",
            1.0,
            "mm",
            96 / 25.4,
            "cm",
            960 / 25.4,
            "in",
            96.0,
            "deg",
            1.0,
            "grad",
            0.9,
            "rad",
            180 / Math.PI,
            "turn",
            360.0);

    private static final Pattern CALL = Pattern.compile("([a-zA-Z]+)\\s*\\(([^)]*)\\)");

    /** First the other, then this. */
    Affine after(Affine o) {
        return new Affine(
                a * o.a + c * o.b,
                b * o.a + d * o.b,
                a * o.c + c * o.d,
                b * o.c + d * o.d,
                a * o.e + c * o.f + e,
                b * o.e + d * o.f + f);
    }

    Spot of(Spot spot) {
        return new Spot(a * spot.x() + c * spot.y() + e, b * spot.x() + d * spot.y() + f, spot.isKnot());
    }

    Stroke of(Stroke stroke) {
        return new Stroke(stroke.spots().stream().map(this::of).toList(), stroke.isClosed(), stroke.layer());
    }

    /** A list of transforms as an attribute or a style has it; empty when any of it cannot be read. */
    static Optional<Affine> parse(String text) {
        if (text.isBlank() || text.strip().equals("none")) {
            return Optional.of(NONE);
        }
        Affine out = NONE;
        Matcher calls = CALL.matcher(text);
        int end = 0;
        while (calls.find()) {
            Optional<Affine> each = call(calls.group(1), numbers(calls.group(2)));
            boolean follows =
                    text.substring(end, calls.start()).replace(",", "").isBlank();
            if (each.isEmpty() || !follows) {
                return Optional.empty();
            }
            out = out.after(each.get());
            end = calls.end();
        }
        return text.substring(end).isBlank() ? Optional.of(out) : Optional.empty();
    }

    /** Numbers with or without a unit: angles in degrees, lengths in pixels. */
    private static List<Double> numbers(String text) {
        List<Double> out = new ArrayList<>();
        for (String each : text.strip().split("\\s*,\\s*|\\s+", -1)) {
            Matcher number = NUMBER.matcher(each);
            Double unit = number.matches() ? UNITS.get(number.group(2)) : null;
            double value = unit == null ? Double.NaN : SvgSizes.number(number.group(1)) * unit;
            if (!(Math.abs(value) < 1e9)) {
                return List.of();
            }
            out.add(value);
        }
        return out;
    }

    private static Optional<Affine> call(String name, List<Double> n) {
        int count = n.size();
        return switch (name) {
            case "matrix" ->
                when(count == 6, () -> new Affine(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5)));
            case "translate" -> when(count == 1 || count == 2, () -> shift(n.get(0), count > 1 ? n.get(1) : 0));
            case "translateX" -> when(count == 1, () -> shift(n.get(0), 0));
            case "translateY" -> when(count == 1, () -> shift(0, n.get(0)));
            case "scale" -> when(count == 1 || count == 2, () -> new Affine(n.get(0), 0, 0, n.get(count - 1), 0, 0));
            case "scaleX" -> when(count == 1, () -> new Affine(n.get(0), 0, 0, 1, 0, 0));
            case "scaleY" -> when(count == 1, () -> new Affine(1, 0, 0, n.get(0), 0, 0));
            case "rotate" ->
                when(
                        count == 1 || count == 3,
                        () -> count == 1
                                ? turn(n.get(0))
                                : shift(n.get(1), n.get(2))
                                        .after(turn(n.get(0)))
                                        .after(shift(-n.get(1), -n.get(2))));
            case "skewX" -> when(count == 1, () -> new Affine(1, 0, Math.tan(Math.toRadians(n.get(0))), 1, 0, 0));
            case "skewY" -> when(count == 1, () -> new Affine(1, Math.tan(Math.toRadians(n.get(0))), 0, 1, 0, 0));
            default -> Optional.empty();
        };
    }

    private static Optional<Affine> when(boolean fits, Supplier<Affine> affine) {
        return fits ? Optional.of(affine.get()) : Optional.empty();
    }

    static Affine shift(double x, double y) {
        return new Affine(1, 0, 0, 1, x, y);
    }

    static Affine turn(double degrees) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        return new Affine(cos, sin, -sin, cos, 0, 0);
    }
}
