package turnalike.frame;

/**
 * Places side by side, as in a rail of balusters: the eye compares each piece with its neighbours. An open row: the ends do not meet.
 *
 * @param places at least 1, else {@link IllegalArgumentException}
 */
public record Row(int places) implements Frame {
    public Row {
        if (places < 1) {
            throw new IllegalArgumentException("a row needs at least 1 place, was %d".formatted(places));
        }
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.row(this);
    }
}
