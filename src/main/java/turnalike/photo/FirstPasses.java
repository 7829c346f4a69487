package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The two passes over all of a picture's pixels, for the coarse picture and for the grey one. Decoding a JPEG is nobody's to share: so what is decoded is
 * passed over meanwhile, by another core if there is one. Whoever decodes tells how far it is; {@link #finish} does the rest.
 */
final class FirstPasses implements PictureDecoder.Watch {
    /** What there is to do, from the beginning of the file on, and how far it was begun. */
    private static final class Pass {
        private final BlockLines lines;

        private int begun;

        Pass(BlockLines lines) {
            this.lines = lines;
        }
    }

    /**
     * Both, for one picture.
     *
     * @param whole the coarse picture
     * @param grey the grey one
     */
    private record Made(CoarsePicture.Lines whole, GreyLines grey) {
        static Made of(Picture picture) {
            return new Made(new CoarsePicture.Lines(picture), new GreyLines(picture));
        }
    }

    private Optional<Made> made = Optional.empty();

    private final List<Pass> passes = new ArrayList<>();

    private final List<Cores.Work<Boolean>> begun = new ArrayList<>();

    private boolean fromEnd;

    private int rows;

    @Override
    public void begins(Picture picture) {
        Made both = Made.of(picture);
        made = Optional.of(both);
        passes.add(new Pass(both.whole));
        passes.add(new Pass(both.grey));
        fromEnd = picture.fromEnd();
        rows = picture.turned() ? picture.width() : picture.height();
    }

    @Override
    public void decoded(int stored) {
        for (Pass pass : passes) {
            BlockLines lines = pass.lines;
            // A picture stored from its lower end up has the rows that are over after its last whole line first.
            int over = fromEnd ? rows - lines.count() * lines.block() : 0;
            int ready = Math.max(0, Math.min(lines.count(), (stored - over) / lines.block()));
            int from = pass.begun;
            if (ready > from) {
                pass.begun = ready;
                begun.add(Cores.begin(() -> {
                    make(lines, from, ready);
                    return true;
                }));
            }
        }
    }

    /** Some lines in the order of the file. */
    private void make(BlockLines lines, int from, int end) {
        if (fromEnd) {
            lines.make(lines.count() - end, lines.count() - from);
        } else {
            lines.make(from, end);
        }
    }

    /** Makes what is not made yet, of a picture that is decoded. */
    void finish(Picture picture) throws Unsure {
        if (made.isEmpty()) {
            begins(picture);
        }
        for (Pass pass : passes) {
            int from = pass.begun;
            pass.begun = pass.lines.count();
            Cores.parts(pass.lines.count() - from, (first, end) -> make(pass.lines, from + first, from + end));
        }
        // The last begun first: that is the one which may still be taken over here.
        for (int k = begun.size() - 1; k >= 0; k--) {
            begun.get(k).done();
        }
    }

    /** The coarse picture, once all is finished. */
    CoarsePicture whole() {
        return made.orElseThrow().whole.picture();
    }

    /** The grey one, likewise. */
    GreyLines grey() {
        return made.orElseThrow().grey;
    }
}
