package turnalike.drawing.svg;

/** One thing in a picture; places are millimetres of the picture it stands in, x to the right and y down. */
public sealed interface Shape permits Backdrop, Group, Path, ShadedArea, TextLine {
    <R> R match(Cases<R> cases);

    interface Cases<R> {
        R group(Group group);

        R path(Path path);

        R tone(ShadedArea tone);

        R words(TextLine words);

        R backdrop(Backdrop backdrop);
    }
}
