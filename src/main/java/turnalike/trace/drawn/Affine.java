package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** x′ = ax + cy + e, y′ = bx + dy + f: SVG's transforms. */
record Affine(double a, double b, double c, double d, double e, double f) {
    static final Affine NONE = new Affine(1, 0, 0, 1, 0, 0);

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

    /** A list of transforms as an attribute has it; what cannot be read changes nothing. */
    static Affine parse(String text) {
        Affine out = NONE;
        Matcher calls = CALL.matcher(text);
        while (calls.find()) {
            out = out.after(call(calls.group(1), numbers(calls.group(2))));
        }
        return out;
    }

    private static List<Double> numbers(String text) {
        List<Double> out = new ArrayList<>();
        for (String each : text.strip().split("[\\s,]+", -1)) {
            try {
                out.add(Double.parseDouble(each));
            } catch (NumberFormatException none) {
                return List.of();
            }
        }
        return out;
    }

    private static Affine call(String name, List<Double> n) {
        int count = n.size();
        return switch (name) {
            case "matrix" -> count == 6 ? new Affine(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5)) : NONE;
            case "translate" -> count >= 1 ? shift(n.get(0), count > 1 ? n.get(1) : 0) : NONE;
            case "scale" -> count >= 1 ? new Affine(n.get(0), 0, 0, count > 1 ? n.get(1) : n.get(0), 0, 0) : NONE;
            case "rotate" ->
                count == 1
                        ? turn(n.get(0))
                        : count == 3
                                ? shift(n.get(1), n.get(2))
                                        .after(turn(n.get(0)))
                                        .after(shift(-n.get(1), -n.get(2)))
                                : NONE;
            case "skewX" -> count == 1 ? new Affine(1, 0, Math.tan(Math.toRadians(n.get(0))), 1, 0, 0) : NONE;
            case "skewY" -> count == 1 ? new Affine(1, Math.tan(Math.toRadians(n.get(0))), 0, 1, 0, 0) : NONE;
            default -> NONE;
        };
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
