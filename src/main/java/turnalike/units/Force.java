package turnalike.units;

/**
 * A force.
 *
 * @param newtons finite and above zero, else {@link IllegalArgumentException}
 */
public record Force(double newtons) implements Comparable<Force> {
    public Force {
        if (!(newtons > 0) || !Double.isFinite(newtons)) {
            throw new IllegalArgumentException("force must be above zero and finite, was %s N".formatted(newtons));
        }
    }

    /**
     * {@return the force of that many newtons}
     *
     * @param newtons finite and above zero, else {@link IllegalArgumentException}
     */
    public static Force ofNewtons(double newtons) {
        return new Force(newtons);
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(newtons, other.newtons);
    }
}
