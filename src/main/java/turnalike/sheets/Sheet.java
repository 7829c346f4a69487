package turnalike.sheets;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import turnalike.drawing.Svg;

/** One thing to print: its pages as a PDF, and the drawings in it as SVG files beside it. */
public final class Sheet {
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

    /** What its files are called, without ending: {@code marking-stick-a4}. */
    public String name() {
        return name;
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
        out.put(name + ".pdf", pdf());
        for (int i = 0; i < drawings.size(); i++) {
            String file = drawings.size() == 1 ? name + ".svg" : name + "-" + (i + 1) + ".svg";
            out.put(file, drawings.get(i).file().getBytes(StandardCharsets.UTF_8));
        }
        return out;
    }
}
