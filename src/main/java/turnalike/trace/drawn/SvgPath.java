package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads SVG's path data: all commands, upper and lower case, with their shortened forms (W3C, SVG 2, chapter on paths; from memory). Reads on
 * to the first mistake, as the specification asks of a reader.
 */
final class SvgPath {
    /** So many characters of a mistake's surroundings are shown. */
    private static final int NEAR = 16;

    private final String text;
    private final String layer;
    private final List<Stroke> strokes = new ArrayList<>();
    private List<Spot> spots = new ArrayList<>();
    private boolean hasMistake;
    private int at;
    private double x;
    private double y;
    private double startX;
    private double startY;
    /** The last curve's second control point, and whether it was a cubic ('C') or quadratic ('Q') one. */
    private double controlX;

    private double controlY;
    private char controlOf = ' ';

    private SvgPath(String text, String layer) {
        this.text = text;
        this.layer = layer;
    }

    static SvgPath of(String text, String layer) {
        SvgPath path = new SvgPath(text, layer);
        try {
            path.commands();
        } catch (NumberFormatException mistake) {
            path.hasMistake = true;
            path.end(false);
        }
        return path;
    }

    List<Stroke> strokes() {
        return List.copyOf(strokes);
    }

    /** Whether it was not read to its end. */
    boolean hasMistake() {
        return hasMistake;
    }

    /** What stands right before the place where reading ended, and there. */
    String near() {
        return text.substring(Math.max(0, at - NEAR), Math.min(text.length(), at + NEAR / 2))
                .strip();
    }

    private void commands() {
        char command = ' ';
        while (more()) {
            char c = text.charAt(at);
            if (Character.isLetter(c)) {
                command = c;
                at++;
            } else if (command == 'M') {
                command = 'L';
            } else if (command == 'm') {
                command = 'l';
            } else if (command == ' ' || Character.toLowerCase(command) == 'z') {
                throw new NumberFormatException("a number without a command");
            }
            draw(Character.toUpperCase(command), Character.isLowerCase(command));
        }
        end(false);
    }

    private void draw(char command, boolean relative) {
        double dx = relative ? x : 0;
        double dy = relative ? y : 0;
        char curve = ' ';
        switch (command) {
            case 'M' -> {
                end(false);
                to(dx + number(), dy + number());
                startX = x;
                startY = y;
            }
            case 'L' -> line(dx + number(), dy + number());
            case 'H' -> line(dx + number(), y);
            case 'V' -> line(x, dy + number());
            case 'C', 'S' -> {
                boolean follows = command == 'S';
                double x1 = follows ? (controlOf == 'C' ? 2 * x - controlX : x) : dx + number();
                double y1 = follows ? (controlOf == 'C' ? 2 * y - controlY : y) : dy + number();
                controlX = dx + number();
                controlY = dy + number();
                begin();
                to(dx + number(), dy + number());
                Curves.cubic(spots, x1, y1, controlX, controlY, x, y);
                curve = 'C';
            }
            case 'Q', 'T' -> {
                boolean follows = command == 'T';
                double x1 = follows ? (controlOf == 'Q' ? 2 * x - controlX : x) : dx + number();
                double y1 = follows ? (controlOf == 'Q' ? 2 * y - controlY : y) : dy + number();
                controlX = x1;
                controlY = y1;
                begin();
                to(dx + number(), dy + number());
                Curves.quadratic(spots, x1, y1, x, y);
                curve = 'Q';
            }
            case 'A' -> {
                double rx = number();
                double ry = number();
                double turn = Math.toRadians(number());
                boolean large = flag();
                boolean sweep = flag();
                begin();
                to(dx + number(), dy + number());
                Curves.svgArc(spots, rx, ry, turn, large, sweep, x, y);
            }
            case 'Z' -> {
                end(true);
                to(startX, startY);
            }
            default -> throw new NumberFormatException("no command " + command);
        }
        controlOf = curve;
    }

    private void to(double newX, double newY) {
        x = newX;
        y = newY;
    }

    private void begin() {
        if (spots.isEmpty()) {
            spots.add(Spot.knot(x, y));
        }
    }

    private void line(double newX, double newY) {
        begin();
        to(newX, newY);
        spots.add(Spot.knot(x, y));
    }

    private void end(boolean closed) {
        if (spots.size() > 1) {
            Spot first = spots.get(0);
            Spot last = spots.get(spots.size() - 1);
            boolean meets = first.x() == last.x() && first.y() == last.y();
            boolean isClosed = closed || (meets && spots.size() > 3);
            strokes.add(new Stroke(isClosed && meets ? spots.subList(0, spots.size() - 1) : spots, isClosed, layer));
        }
        spots = new ArrayList<>();
    }

    private boolean more() {
        while (at < text.length() && (Character.isWhitespace(text.charAt(at)) || text.charAt(at) == ',')) {
            at++;
        }
        return at < text.length();
    }

    /** A flag of an arc may stand right before the next number. */
    private boolean flag() {
        if (!more() || (text.charAt(at) != '0' && text.charAt(at) != '1')) {
            throw new NumberFormatException("no flag");
        }
        return text.charAt(at++) == '1';
    }

    private double number() {
        if (!more()) {
            throw new NumberFormatException("no number");
        }
        int from = at;
        if (text.charAt(at) == '+' || text.charAt(at) == '-') {
            at++;
        }
        digits();
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            digits();
        }
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            int before = at++;
            if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
                at++;
            }
            int digitsFrom = at;
            digits();
            at = at == digitsFrom ? before : at;
        }
        double value = Double.parseDouble(text.substring(from, at));
        if (!(Math.abs(value) < 1e9)) {
            throw new NumberFormatException("too large");
        }
        return value;
    }

    private void digits() {
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
    }
}
