package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import turnalike.drawing.gauge.SquaresPage;
import turnalike.drawing.svg.Svg;
import turnalike.photo.SheetSquares;

/** The pages of numbered squares that give a picture its scale, landscape, to be laid in a row with their short edges touching. */
public final class PhotoSheets {
    private PhotoSheets() {}

    /**
     * The sheet.
     *
     * @param pages from 1 to {@link SheetSquares#MOST_PAGES}
     */
    public static Sheet of(int pages, Paper paper) {
        Paper.Format format = paper.landscape();
        List<Svg> drawings = new ArrayList<>();
        List<PdfPages.Page> out = new ArrayList<>();
        for (int page = 1; page <= pages; page++) {
            Svg drawing = SquaresPage.svg(page, pages);
            drawings.add(drawing);
            PlacedDrawing placed = PlacedDrawing.whole(
                    drawing,
                    format.width().minus(SquaresPage.WIDTH).times(0.5),
                    format.height().minus(SquaresPage.HEIGHT).times(0.5));
            out.add(new PdfPages.Page(format, List.of(placed)));
        }
        String name = "photo-sheet-" + paper.label().toLowerCase(Locale.ROOT).replace(' ', '-');
        return new Sheet(name, "Photo sheet", drawings, out);
    }
}
