package turnalike.drawing.svg;

import java.util.List;
import java.util.Locale;

/**
 * An area of lit wood. The only shape whose colour is its own: a turned body needs more tones than there are pens.
 *
 * @param light from 0, in the shade, to 1, where the light falls straight
 */
public record ShadedArea(double light, List<Path.Step> steps) implements Shape {
    private static final int[] SHADE = {0x7a, 0x55, 0x2c};
    private static final int[] WOOD = {0xe2, 0xc0, 0x8d};
    private static final int[] BRIGHT = {0xf8, 0xe8, 0xcb};

    /** Where the wood has its plain colour. */
    private static final double PLAIN = 0.7;

    public ShadedArea {
        steps = List.copyOf(steps);
        if (!(light >= 0 && light <= 1)) {
            throw new IllegalArgumentException("light is from 0 to 1, was %s".formatted(light));
        }
    }

    /** The colour, as {@code #rrggbb}. */
    public String fill() {
        int[] from = light < PLAIN ? SHADE : WOOD;
        int[] to = light < PLAIN ? WOOD : BRIGHT;
        double share = light < PLAIN ? light / PLAIN : (light - PLAIN) / (1 - PLAIN);
        StringBuilder out = new StringBuilder("#");
        for (int i = 0; i < from.length; i++) {
            out.append(String.format(Locale.ROOT, "%02x", Math.round(from[i] + share * (to[i] - from[i]))));
        }
        return out.toString();
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.tone(this);
    }
}
