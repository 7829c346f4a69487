package turnalike.drawing.svg;

import java.util.List;

/**
 * A photograph laid into a picture on a page. It is named by its address there, so it is of no use in a file or on paper.
 *
 * @param address where the page has it
 * @param widthPx its pixels in a row
 * @param heightPx its rows
 * @param matrix from pixels to millimetres of the picture: x = m0·u + m2·v + m4, y = m1·u + m3·v + m5; six numbers
 */
public record Backdrop(String address, int widthPx, int heightPx, List<Double> matrix) implements Shape {
    public Backdrop {
        matrix = List.copyOf(matrix);
        if (matrix.size() != 6) {
            throw new IllegalArgumentException("six numbers carry a photograph over, were " + matrix.size());
        }
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.backdrop(this);
    }
}
