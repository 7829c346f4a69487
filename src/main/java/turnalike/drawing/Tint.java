package turnalike.drawing;

/**
 * An area in a colour of its own, where a few pens are not enough: wood in light and shade.
 *
 * @param area what is filled; its pen is not used
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Tint(Path area, int red, int green, int blue) implements Shape {
    public Tint {
        if ((red | green | blue) < 0 || Math.max(red, Math.max(green, blue)) > 255) {
            throw new IllegalArgumentException(
                    "a colour's parts are 0 to 255, were %d %d %d".formatted(red, green, blue));
        }
    }

    /** As {@code #rrggbb}. */
    String colour() {
        return "#%02x%02x%02x".formatted(red, green, blue);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.tint(this);
    }
}
