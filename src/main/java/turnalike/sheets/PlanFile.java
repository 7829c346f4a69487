package turnalike.sheets;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import turnalike.drawing.dxf.PieceDxf;
import turnalike.drawing.model.OutlineSvg;
import turnalike.drawing.model.StationTable;
import turnalike.drawing.model.StlFile;
import turnalike.drawing.model.ThreeMfFile;
import turnalike.job.Job;
import turnalike.solid.Mesh;

/** What other programs and machines take of a job's pattern. A new file is one line here: the command line and the page know them by this. */
@SuppressWarnings("ImmutableEnumChecker") // the makers are methods, which have no state
public enum PlanFile {
    OUTLINE_DXF(
            "outline.dxf",
            "dxf",
            "image/vnd.dxf",
            "Half the outline, closed along the axis: for a laser, a router or a drawing program.",
            job -> text(PieceDxf.outline(job.pattern()))),
    TEMPLATE_DXF(
            "checking-template.dxf",
            "dxf",
            "image/vnd.dxf",
            "The checking template, to cut.",
            job -> text(PieceDxf.template(job.pattern(), job.units()))),
    OUTLINE_SVG(
            "outline.svg",
            "svg",
            "image/svg+xml",
            "The whole outline, closed, to draw on with.",
            job -> text(OutlineSvg.of(job.pattern()).file())),
    PIECE_STL(
            "piece.stl",
            "stl",
            "model/stl",
            "The piece as a body in millimetres: a printed master to look at and measure.",
            job -> StlFile.of(Mesh.of(job.pattern().outline()), job.title())),
    PIECE_3MF(
            "piece.3mf",
            "3mf",
            "model/3mf",
            "The same body with its unit and name: take this one where the printing program reads it.",
            job -> ThreeMfFile.of(Mesh.of(job.pattern().outline()), job.title())),
    STATIONS(
            "stations.csv",
            "stations",
            "text/csv; charset=utf-8",
            "How thick it is at every mark and step along it, as a table.",
            job -> text(StationTable.of(job.pattern(), job.units(), StationTable.usualStep(job.units()))));

    private final String fileName;
    private final String word;
    private final String mediaType;
    private final String use;
    private final Function<Job, byte[]> making;

    PlanFile(String fileName, String word, String mediaType, String use, Function<Job, byte[]> making) {
        this.fileName = fileName;
        this.word = word;
        this.mediaType = mediaType;
        this.use = use;
        this.making = making;
    }

    /** Those that go by one word, for one program may want several; none for a word that is unknown. */
    public static List<PlanFile> of(String word) {
        return Arrays.stream(values()).filter(each -> each.word.equals(word)).toList();
    }

    /** The words there are, each once. */
    public static List<String> words() {
        return Stream.of(values()).map(each -> each.word).distinct().toList();
    }

    public String fileName() {
        return fileName;
    }

    /** Its format, as it is asked for: {@code stl}. */
    public String word() {
        return word;
    }

    /** As HTTP writes it. */
    public String mediaType() {
        return mediaType;
    }

    /** What it is for, a sentence. */
    public String use() {
        return use;
    }

    /** Does it show a body, which a printer makes? */
    public boolean isBody() {
        return this == PIECE_STL || this == PIECE_3MF;
    }

    /** The file's bytes; the same job gives the same. */
    public byte[] of(Job job) {
        return making.apply(job);
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
