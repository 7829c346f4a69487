package turnalike.frame;

/** What the set is put into. */
public sealed interface Frame permits Wheel, Row, Legs {
    /** How many pieces it takes; places are numbered from 1 for people and from 0 in code. */
    int places();

    <R> R match(Cases<R> cases);

    /** One answer for each kind of frame. */
    interface Cases<R> {
        R wheel(Wheel wheel);

        R row(Row row);

        R legs(Legs legs);
    }
}
