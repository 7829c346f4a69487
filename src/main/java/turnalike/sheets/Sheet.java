package turnalike.sheets;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.units.Length;

/** One thing to print: its pages as a PDF, and the drawings in it as SVG files beside it. */
public final class Sheet {
    /** From the upper margin up to where a line above the heading stands. */
    private static final double ABOVE_HEADING_MM = 2;

    private final String name;
    private final String title;
    private final List<Svg> drawings;
    private final List<PdfPages.Page> pages;

    Sheet(String name, String title, List<Svg> drawings, List<PdfPages.Page> pages) {
        this.name = name;
        this.title = title;
        this.drawings = List.copyOf(drawings);
        this.pages = List.copyOf(pages);
    }

    /** Several of one kind as one: their pages one after the other, under the first one's name. */
    static Sheet joined(String title, List<Sheet> sheets) {
        return new Sheet(
                sheets.get(0).name,
                title,
                sheets.stream().flatMap(each -> each.drawings.stream()).toList(),
                sheets.stream().flatMap(each -> each.pages.stream()).toList());
    }

    /** What its files are called, without ending: {@code marking-stick-a4}. */
    public String name() {
        return name;
    }

    /** The same with a line on every page: at the foot of one that lies, whose lower right corner is free, above the heading of one that stands. */
    Sheet marked(String line) {
        List<PdfPages.Page> out = new ArrayList<>();
        for (PdfPages.Page page : pages) {
            List<PlacedDrawing> drawn = new ArrayList<>(page.drawings());
            Paper.Format format = page.format();
            boolean lies = format.width().compareTo(format.height()) > 0;
            double right = format.width().minus(Paper.MARGIN).mm();
            // A page that stands has its check bars across the foot; what is above its heading is free.
            double down = lies ? format.height().minus(Paper.MARGIN).mm() - 1 : Paper.MARGIN.mm() - ABOVE_HEADING_MM;
            TextLine words = TextLine.ending(Lettering.STRONG, right, down, line);
            Svg whole = new Svg(format.width(), format.height(), line, List.of(words));
            drawn.add(PlacedDrawing.whole(whole, Length.ZERO, Length.ZERO));
            out.add(new PdfPages.Page(format, drawn));
        }
        return new Sheet(name, title, drawings, out);
    }

    List<PdfPages.Page> pages() {
        return pages;
    }

    public int pageCount() {
        return pages.size();
    }

    /** The drawings as they stand in the PDF. */
    public List<Svg> drawings() {
        return drawings;
    }

    /** The PDF; the same sheet gives the same bytes. */
    public byte[] pdf() {
        return PdfPages.pdf(title, pages);
    }

    /** Every file by its name, the PDF first: {@code x.pdf}, {@code x.svg} or {@code x-1.svg}, {@code x-2.svg} … */
    public Map<String, byte[]> files() {
        Map<String, byte[]> out = new LinkedHashMap<>();
        List<String> names = fileNames();
        for (int i = 0; i < names.size(); i++) {
            out.put(names.get(i), content(i));
        }
        return out;
    }

    /** The names of {@link #files} in the same order, without the work of making them. */
    public List<String> fileNames() {
        List<String> out = new ArrayList<>(List.of(name + ".pdf"));
        for (int i = 0; i < drawings.size(); i++) {
            out.add(drawings.size() == 1 ? name + ".svg" : name + "-" + (i + 1) + ".svg");
        }
        return out;
    }

    /** One of the files by its name, and no other made; empty when none is called so. */
    public Optional<byte[]> file(String file) {
        int at = fileNames().indexOf(file);
        return at < 0 ? Optional.empty() : Optional.of(content(at));
    }

    private byte[] content(int file) {
        return file == 0 ? pdf() : drawings.get(file - 1).file().getBytes(StandardCharsets.UTF_8);
    }
}
