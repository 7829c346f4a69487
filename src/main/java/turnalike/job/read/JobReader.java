package turnalike.job.read;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import turnalike.job.CheckPlace;
import turnalike.job.Cutting;
import turnalike.job.Job;
import turnalike.job.LayoutWishes;
import turnalike.job.Shop;
import turnalike.job.Tolerances;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Json;
import turnalike.job.fields.Reading;
import turnalike.job.keys.AllowanceKeys;
import turnalike.job.keys.JobKeys;
import turnalike.job.keys.LikenessKeys;
import turnalike.job.keys.SawingKeys;
import turnalike.job.keys.ToleranceKeys;
import turnalike.job.set.ByHand;
import turnalike.job.set.Frame;
import turnalike.job.set.FrameKind;
import turnalike.job.set.PieceLength;
import turnalike.job.wood.HomeReader;
import turnalike.job.wood.WoodReader;
import turnalike.pattern.CurveRules;
import turnalike.pattern.Pattern;
import turnalike.pieces.LikenessWeights;
import turnalike.pieces.Piece;
import turnalike.stock.Allowances;
import turnalike.stock.boards.Sawing;
import turnalike.turning.Lathe;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;
import turnalike.wood.Wood;
import turnalike.year.Home;

/** The whole job file: format and units first, since they decide how the rest is read. */
public final class JobReader {
    /** The title of a job that gives none. */
    public static final String UNTITLED = "Untitled";

    private static final String NOTED_MEND =
            "name a further column of the pieces and give what a grade counts, such as {\"colour\": 0.5}";

    private JobReader() {}

    /**
     * Reads the text of a job file. A text that is no JSON object, another format or a later version is told as such and not picked apart;
     * of anything else every problem is told. Whether the wishes leave a plan is looked at last, once all the rest is right.
     *
     * @param text the whole file; a byte order mark at its start is read over
     * @return the job, or the problems
     */
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
        fields.word(JobKeys.UNITS).flatMap(UnitSystem::find).ifPresent(reading::units);
        String title = fields.findText(JobKeys.TITLE).orElse(UNTITLED);
        Optional<Pattern> pattern = fields.object(JobKeys.PATTERN, "describe the spindle: stock and members")
                .flatMap(each -> PatternReader.read(each, title));
        Optional<Wood> wood = fields.object(JobKeys.WOOD, "give {\"species\": …, \"moisture_pct\": …}")
                .flatMap(WoodReader::read);
        Optional<Frame> framed = fields.has(JobKeys.FRAME)
                ? fields.object(JobKeys.FRAME, "describe the wheel, row or legs")
                        .flatMap(FrameKind::read)
                : Optional.empty();
        Optional<Frame> frame = framed.flatMap(
                each -> pattern.map(whole -> each.over(whole, reading)).orElse(framed));
        Optional<Length> counterweight = fields.size(JobKeys.COUNTERWEIGHT_RADIUS);
        List<CheckPlace> checks = ChecksReader.read(fields, pattern);
        Optional<Integer> count = fields.has(JobKeys.COUNT)
                ? fields.whole(JobKeys.COUNT)
                : frame.map(Frame::pieces).or(() -> Optional.of(1));
        Optional<Double> lossPct = fields.number(JobKeys.LOSS);
        Optional<Tolerances> tolerances =
                fields.objectOrEmpty(JobKeys.TOLERANCES).flatMap(JobReader::tolerances);
        Optional<Sawing> sawing = fields.objectOrEmpty(JobKeys.SAWING).flatMap(JobReader::sawing);
        Optional<Cutting> cutting = fields.objectOrEmpty(JobKeys.ALLOWANCES)
                .flatMap(each -> cutting(each, sawing.orElse(Sawing.usual(each.units()))));
        Optional<Lathe> lathe = fields.objectOrEmpty(JobKeys.TURNING).flatMap(TurningReader::read);
        CurveRules rules = lathe.map(each -> each.rules().curves()).orElse(CurveRules.USUAL);
        Optional<Pattern> sized = pattern.map(whole -> tolerances
                .map(each -> whole.sizedWithin(each.diameter(), rules))
                .orElse(whole));
        Optional<LayoutWishes> wishes =
                fields.objectOrEmpty(JobKeys.SETTINGS).flatMap(each -> SettingsReader.read(each, sized));
        Optional<LikenessWeights> likeness =
                fields.objectOrEmpty(JobKeys.LIKENESS).flatMap(JobReader::likeness);
        Optional<Home> home = fields.has(JobKeys.HOME)
                ? fields.object(JobKeys.HOME, "write it in braces").flatMap(HomeReader::read)
                : Optional.empty();
        Shop shop = ShopReader.read(fields);
        Optional<ByHand> byHand = fields.objectOrEmpty(JobKeys.BY_HAND).flatMap(ByHandReader::read);
        fields.refuseUnknown(JobKeys.ROOT);
        frame.ifPresent(each -> count.ifPresent(number -> each.tellCount(number, reading)));
        if (reading.count() == 0) {
            SettingsReader.obstacles(sized.orElseThrow(), wishes.orElseThrow(), tolerances.orElseThrow(), reading);
            frame.ifPresent(each -> obstacles(
                    each.lengths(), sized.orElseThrow(), wishes.orElseThrow(), tolerances.orElseThrow(), reading));
        }
        if (reading.count() > 0) {
            return Optional.empty();
        }
        return Optional.of(new Job(
                title,
                reading.units(),
                sized.orElseThrow(),
                wood.orElseThrow(),
                count.orElseThrow(),
                lossPct.orElseThrow() / 100,
                tolerances.orElseThrow(),
                cutting.orElseThrow(),
                wishes.orElseThrow(),
                likeness.orElseThrow(),
                checks,
                lathe.orElseThrow(),
                home,
                shop,
                frame.map(each -> counterweight.map(each::withCounterweightAt).orElse(each)),
                byHand.orElseThrow()));
    }

    /** What keeps a plan from being made for one of several lengths, told once for each that has it. */
    private static void obstacles(
            List<PieceLength> lengths, Pattern pattern, LayoutWishes wishes, Tolerances tolerances, Reading reading) {
        for (int i = 0; i < lengths.size() && reading.count() == 0; i++) {
            PieceLength each = lengths.get(i);
            Reading own = new Reading();
            own.units(reading.units());
            SettingsReader.obstacles(
                    pattern.stretched(pattern.name(), each.stretch(), each.length()), wishes, tolerances, own);
            String where = "frame: lengths %d: ".formatted(i + 1);
            own.problems().forEach(told -> reading.problem(where + told.where(), told.what(), told.mend()));
        }
    }

    /** A file of another kind or a later version is not picked apart: every further complaint would be noise. */
    private static boolean formatIsOurs(Fields fields) {
        int before = fields.reading().count();
        String ours = JobKeys.FORMAT.type().words().get(0);
        fields.only(
                JobKeys.FORMAT, "begin the file with \"format\": \"%s\"".formatted(ours), "this program reads " + ours);
        fields.whole(JobKeys.VERSION);
        return fields.reading().count() == before;
    }

    private static Optional<Tolerances> tolerances(Fields fields) {
        Optional<Length> mark = fields.size(ToleranceKeys.MARK);
        boolean limited = fields.has(ToleranceKeys.MARK_LIMIT);
        Optional<Length> markLimit = limited ? fields.size(ToleranceKeys.MARK_LIMIT) : Optional.empty();
        Optional<Length> diameter = fields.size(ToleranceKeys.DIAMETER);
        Optional<Double> massPct = fields.number(ToleranceKeys.MASS);
        Optional<WeighingScale> scale = scale(fields);
        Optional<Length> seat = fields.size(ToleranceKeys.SEAT);
        Optional<Double> holeAngle = fields.number(ToleranceKeys.HOLE_ANGLE);
        fields.refuseUnknown(JobKeys.TOLERANCES.type());
        if (limited && markLimit.isEmpty()) {
            return Optional.empty();
        }
        boolean known =
                Stream.of(mark, diameter, massPct, scale, seat, holeAngle).allMatch(Optional::isPresent);
        return known
                ? Optional.of(new Tolerances(
                        mark.orElseThrow(),
                        markLimit,
                        diameter.orElseThrow(),
                        massPct.orElseThrow(),
                        scale.orElseThrow().step(),
                        scale.orElseThrow().unit(),
                        seat.orElseThrow(),
                        Angle.ofDegrees(holeAngle.orElseThrow())))
                : Optional.empty();
    }

    /** Both are asked for, since what nobody asks for is unknown. */
    private static Optional<WeighingScale> scale(Fields fields) {
        boolean inGrams = fields.has(ToleranceKeys.SCALE);
        if (!fields.has(ToleranceKeys.SCALE_OZ)) {
            return fields.number(ToleranceKeys.SCALE).map(step -> new WeighingScale(Mass.ofGrams(step)));
        }
        if (inGrams) {
            fields.reading()
                    .problem(
                            fields.where(),
                            "gives what the scale shows in grams and in ounces",
                            "keep scale_g or scale_oz, not both");
            return Optional.empty();
        }
        return fields.number(ToleranceKeys.SCALE_OZ)
                .map(step -> new WeighingScale(Mass.ofOunces(step), MassUnit.OUNCE));
    }

    private static Optional<LikenessWeights> likeness(Fields fields) {
        Optional<Double> length = fields.number(LikenessKeys.LENGTH);
        Optional<Double> diameter = fields.number(LikenessKeys.DIAMETER);
        Optional<Double> mass = fields.number(LikenessKeys.MASS);
        Map<String, Double> noted = fields.has(LikenessKeys.NOTED)
                ? fields.object(LikenessKeys.NOTED, NOTED_MEND)
                        .map(JobReader::noted)
                        .orElse(Map.of())
                : Map.of();
        fields.refuseUnknown(JobKeys.LIKENESS.type());
        return length.flatMap(l -> diameter.flatMap(d -> mass.map(m -> new LikenessWeights(l, d, m, noted))));
    }

    /** Extra columns that note what is judged by eye; any name but a measured column's may stand there. */
    private static Map<String, Double> noted(Fields fields) {
        Map<String, Double> out = new TreeMap<>();
        for (String name : fields.names()) {
            if (name.isBlank() || Piece.isKnown(name)) {
                fields.reading().problem(fields.at("'%s'".formatted(name)), "is no extra column", NOTED_MEND);
            }
            fields.number(name, LikenessKeys.NOTED.type().number()).ifPresent(weight -> out.put(name, weight));
        }
        return out;
    }

    private static Optional<Cutting> cutting(Fields fields, Sawing sawing) {
        Allowances usual = Allowances.usual(fields.units());
        Optional<Length> sizing = fields.size(AllowanceKeys.SIZING);
        Optional<Length> sanding = fields.size(AllowanceKeys.SANDING);
        Optional<Length> milling = fields.has(AllowanceKeys.MILLING)
                ? fields.size(AllowanceKeys.MILLING)
                : Optional.of(usual.millingPerFace());
        Optional<Length> trimming = fields.has(AllowanceKeys.TRIMMING)
                ? fields.size(AllowanceKeys.TRIMMING)
                : Optional.of(usual.trimmingPerEnd());
        fields.refuseUnknown(JobKeys.ALLOWANCES.type());
        return sizing.flatMap(s -> sanding.flatMap(
                d -> milling.flatMap(m -> trimming.map(t -> new Cutting(s, d, new Allowances(m, t), sawing)))));
    }

    private static Optional<Sawing> sawing(Fields fields) {
        Sawing usual = Sawing.usual(fields.units());
        Optional<Length> kerf = fields.has(SawingKeys.KERF) ? fields.size(SawingKeys.KERF) : Optional.of(usual.kerf());
        Optional<Length> edge = fields.has(SawingKeys.EDGE) ? fields.size(SawingKeys.EDGE) : Optional.of(usual.edge());
        Optional<Length> end = fields.has(SawingKeys.END) ? fields.size(SawingKeys.END) : Optional.of(usual.end());
        fields.refuseUnknown(JobKeys.SAWING.type());
        return kerf.flatMap(k -> edge.flatMap(e -> end.map(n -> new Sawing(k, e, n))));
    }
}
