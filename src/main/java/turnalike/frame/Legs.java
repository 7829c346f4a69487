package turnalike.frame;

/**
 * Places that are all seen together, as the legs under a table: each piece is compared with every other one.
 *
 * @param places at least 1, else {@link IllegalArgumentException}
 */
public record Legs(int places) implements Frame {
    public Legs {
        if (places < 1) {
            throw new IllegalArgumentException("legs need at least 1 place, was %d".formatted(places));
        }
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.legs(this);
    }
}
