package turnalike.job.read;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import turnalike.job.CheckPlace;
import turnalike.job.Cutting;
import turnalike.job.Job;
import turnalike.job.JobFrame;
import turnalike.job.LayoutWishes;
import turnalike.job.Tolerances;
import turnalike.pattern.Pattern;
import turnalike.pieces.Piece;
import turnalike.pieces.Weights;
import turnalike.stock.Allowances;
import turnalike.stock.Spares;
import turnalike.turning.Lathe;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;
import turnalike.wood.Wood;

/** The whole job file: format and units first, since they decide how the rest is read. */
public final class JobReader {
    static final String FORMAT = "turnalike-job";
    static final int VERSION = 1;

    private static final int MOST_PIECES = 10_000;
    private static final String NOTED_MEND =
            "name a further column of the pieces and give what a grade counts, such as {\"colour\": 0.5}";

    private JobReader() {}

    /** Reads the text of a job file. */
    public static Job.Read read(String text) {
        Reading reading = new Reading();
        Optional<Job> job = Json.parse(text, reading).flatMap(object -> read(object, reading));
        return new Job.Read(reading.problems().isEmpty() ? job : Optional.empty(), reading.problems());
    }

    private static Optional<Job> read(ObjectNode object, Reading reading) {
        Fields fields = new Fields("", object, reading);
        if (!formatIsOurs(fields)) {
            return Optional.empty();
        }
        fields.choice("units", "\"in\" or \"mm\"", UnitSystem::find).ifPresent(reading::units);
        String title = fields.findText("title").orElse("Untitled");
        Optional<Pattern> pattern = fields.object("pattern", "describe the spindle: stock and members")
                .flatMap(each -> PatternReader.read(each, title));
        Optional<Wood> wood = fields.object("wood", "give {\"species\": …, \"moisture_pct\": …}")
                .flatMap(WoodReader::read);
        Optional<JobFrame> frame = fields.has("frame")
                ? fields.object("frame", "describe the wheel, row or legs").flatMap(FrameReader::read)
                : Optional.empty();
        Optional<Length> counterweight =
                fields.has("counterweight_radius") ? fields.positive("counterweight_radius") : Optional.empty();
        List<CheckPlace> checks = ChecksReader.read(fields, pattern);
        Optional<Integer> count = fields.has("count")
                ? fields.wholeNumber("count", 1, MOST_PIECES)
                : frame.map(JobFrame::pieces).or(() -> Optional.of(1));
        Optional<Double> lossPct = fields.numberOr("loss_pct", 100 * Spares.USUAL_LOSS_RATE, 0, 90);
        Optional<Tolerances> tolerances = fields.objectOrEmpty("tolerances").flatMap(JobReader::tolerances);
        Optional<Cutting> cutting = fields.objectOrEmpty("allowances").flatMap(JobReader::cutting);
        Optional<LayoutWishes> wishes =
                fields.objectOrEmpty("settings").flatMap(each -> SettingsReader.read(each, pattern));
        Optional<Weights> likeness = fields.objectOrEmpty("likeness").flatMap(JobReader::likeness);
        Optional<Lathe> lathe = fields.objectOrEmpty("turning").flatMap(TurningReader::read);
        fields.refuseUnknown();
        if (reading.count() == 0) {
            SettingsReader.obstacles(pattern.orElseThrow(), wishes.orElseThrow(), tolerances.orElseThrow(), reading);
        }
        if (reading.count() > 0) {
            return Optional.empty();
        }
        return Optional.of(new Job(
                title,
                reading.units(),
                pattern.orElseThrow(),
                wood.orElseThrow(),
                count.orElseThrow(),
                lossPct.orElseThrow() / 100,
                tolerances.orElseThrow(),
                cutting.orElseThrow(),
                wishes.orElseThrow(),
                likeness.orElseThrow(),
                checks,
                lathe.orElseThrow(),
                frame.map(each -> counterweight.map(each::withCounterweightAt).orElse(each))));
    }

    /** A file of another kind or a later version is not picked apart: every further complaint would be noise. */
    private static boolean formatIsOurs(Fields fields) {
        int before = fields.reading().count();
        Optional<String> format = fields.text("format", "begin the file with \"format\": \"%s\"".formatted(FORMAT));
        if (format.isPresent() && !format.get().equals(FORMAT)) {
            fields.reading().problem("format", "was '%s'".formatted(format.get()), "this program reads " + FORMAT);
        }
        fields.wholeNumber("version", VERSION, VERSION);
        return fields.reading().count() == before;
    }

    private static Optional<Tolerances> tolerances(Fields fields) {
        Tolerances usual = Tolerances.USUAL;
        Optional<Length> mark = fields.positiveOr("mark", usual.mark());
        Optional<Length> markLimit = fields.positiveOr("mark_limit", Tolerances.limitFor(mark.orElseGet(usual::mark)));
        Optional<Length> diameter = fields.positiveOr("diameter", usual.diameter());
        Optional<Double> massPct = fields.numberOr("mass_pct", usual.massPct(), 0, 100);
        Optional<Double> scale = fields.numberOr("scale_g", usual.scale().grams(), 0, 1000);
        fields.refuseUnknown();
        return mark.flatMap(m -> markLimit.flatMap(limit -> diameter.flatMap(
                d -> massPct.flatMap(pct -> scale.map(g -> new Tolerances(m, limit, d, pct, Mass.ofGrams(g)))))));
    }

    private static Optional<Weights> likeness(Fields fields) {
        Weights usual = Weights.USUAL;
        Optional<Double> length = fields.numberOr("length", usual.length(), 0, 1000);
        Optional<Double> diameter = fields.numberOr("diameter", usual.diameter(), 0, 1000);
        Optional<Double> mass = fields.numberOr("mass", usual.mass(), 0, 1000);
        Map<String, Double> noted = fields.has("noted")
                ? fields.object("noted", NOTED_MEND).map(JobReader::noted).orElse(Map.of())
                : usual.noted();
        fields.refuseUnknown();
        return length.flatMap(l -> diameter.flatMap(d -> mass.map(m -> new Weights(l, d, m, noted))));
    }

    /** Extra columns that note what is judged by eye; any name but a measured column's may stand there. */
    private static Map<String, Double> noted(Fields fields) {
        Map<String, Double> out = new TreeMap<>();
        for (String name : fields.names()) {
            if (name.isBlank() || Piece.isKnown(name)) {
                fields.reading().problem(fields.at("'%s'".formatted(name)), "is no extra column", NOTED_MEND);
            }
            fields.number(name, 0, 1000).ifPresent(weight -> out.put(name, weight));
        }
        return out;
    }

    private static Optional<Cutting> cutting(Fields fields) {
        Allowances usual = Allowances.usual(fields.units());
        Optional<Length> sizing = fields.lengthOr("sizing", Length.ZERO);
        Optional<Length> sanding = fields.lengthOr("sanding", Length.ZERO);
        Optional<Length> milling = fields.lengthOr("milling", usual.millingPerFace());
        Optional<Length> trimming = fields.lengthOr("trimming", usual.trimmingPerEnd());
        fields.refuseUnknown();
        return sizing.flatMap(s ->
                sanding.flatMap(d -> milling.flatMap(m -> trimming.map(t -> new Cutting(s, d, new Allowances(m, t))))));
    }
}
