package turnalike.job.kept;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/**
 * Writes a page of JSON as the value of a key in another: each line stands further in, and the last line's end is left out. No text within
 * JSON holds a line end, so each one is between two lines.
 */
final class WithinObject extends FilterWriter {
    private static final String FURTHER_IN = "\n  ";

    private boolean lineEnded;

    WithinObject(Writer out) {
        super(out);
    }

    @Override
    public void write(int letter) throws IOException {
        write(new char[] {(char) letter}, 0, 1);
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        write(text.toCharArray(), from, length);
    }

    @Override
    public void write(char[] letters, int from, int length) throws IOException {
        int begun = from;
        for (int at = from; at < from + length; at++) {
            if (lineEnded) {
                out.write(FURTHER_IN);
                lineEnded = false;
            }
            if (letters[at] == '\n') {
                out.write(letters, begun, at - begun);
                begun = at + 1;
                lineEnded = true;
            }
        }
        out.write(letters, begun, from + length - begun);
    }
}
