package turnalike.web.turning;

import static java.lang.String.format;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import turnalike.drawing.frame.FrameElevation;
import turnalike.drawing.piece.CutDrawing;
import turnalike.drawing.piece.ShadedSpindle;
import turnalike.drawing.svg.Svg;
import turnalike.job.Plan;
import turnalike.job.set.FrameFit;
import turnalike.job.set.Misfit;
import turnalike.pattern.Warning;
import turnalike.turning.Cut;
import turnalike.turning.SpeedAdvice;
import turnalike.turning.SpeedRange;
import turnalike.turning.Stage;
import turnalike.turning.Turning;
import turnalike.units.Force;
import turnalike.units.Length;
import turnalike.units.PlainNumber;
import turnalike.units.Speed;
import turnalike.units.UnitSystem;
import turnalike.units.Working;
import turnalike.web.job.FigureView;
import turnalike.web.kit.JobSteps;

/** What the turning page shows of a plan. */
public record TurningView(String address, Plan plan, JobSteps steps) {
    private static final Length TURNED_WIDTH = Length.ofMm(300);
    private static final Length TURNED_TALLEST = Length.ofMm(60);
    /** Shown as wide as a telephone, its numbers are still read. */
    private static final Length PLACE_WIDTH = Length.ofMm(90);

    private static final Length PLACE_TALLEST = Length.ofMm(14);

    private static final double FRAME_WIDTH_MM = 190;
    private static final double NARROW_FRAME_WIDTH_MM = 88;

    /**
     * How the frame will stand.
     *
     * @param picture of it
     * @param narrow the same for a telephone
     * @param misfits what cannot be, a sentence each
     * @param figures of it, a sentence each
     */
    public record Standing(String picture, String narrow, List<String> misfits, List<String> figures) {}

    /** One cut as a line of the list. */
    public record Line(
            int number, String tool, String setting, String what, String why, String caution, String picture) {}

    /** One stage of the work as a row of the table. */
    public record Row(String name, String first, String second, String sag, String bows) {}

    private Turning turning() {
        return plan.turning();
    }

    private UnitSystem units() {
        return plan.job().units();
    }

    public String title() {
        return plan.job().title();
    }

    /** The piece as it will look. */
    public String turned() {
        return ShadedSpindle.svg(plan.job().pattern(), TURNED_WIDTH, TURNED_TALLEST)
                .inline();
    }

    /** The frame as it will stand, if the job has one that asks something of the pattern. */
    public Optional<Standing> frame() {
        return plan.frame()
                .map(fit -> new Standing(
                        elevation(fit, FRAME_WIDTH_MM),
                        elevation(fit, NARROW_FRAME_WIDTH_MM),
                        fit.misfits().stream().map(Misfit::sentence).toList(),
                        fit.sentences(units(), plan.job().tolerances().masses())));
    }

    private String elevation(FrameFit fit, double widthMm) {
        return fit.match(new FrameElevation(plan.job().pattern(), widthMm)).inline();
    }

    /** Whether the joints are followed through the year, on the page of the wood. */
    public boolean hasYear() {
        return plan.year().isPresent();
    }

    public List<FigureView> figures() {
        List<FigureView> out = new ArrayList<>();
        turning()
                .offered()
                .ifPresentOrElse(
                        speeds -> speeds(out, speeds),
                        () -> out.add(figure("Speed", "none", "the tailstock bows the piece out", "Buckling")));
        out.add(figure("Held", turning().heldText(), "", "Order of cuts"));
        turning().whip().ifPresent(whip -> {
            out.add(figure(
                    "Whips at",
                    whips(whip.first()),
                    turning().isFarFromWhip()
                            ? "no lathe comes near it"
                            : turning().isBeyondLathes(whip.second()) ? "" : "and again at " + rpm(whip.second()),
                    "Natural speeds"));
            out.add(figure(
                    "Pushed aside at most",
                    whip.most().text(units()),
                    "by %s at %s"
                            .formatted(
                                    whip.cutting().format(units()),
                                    whip.most().place().format(units())),
                    "Sag"));
            turning()
                    .steady()
                    .ifPresent(place -> out.add(figure(
                            "A steady rest helps most at",
                            place.formatRoughly(units()),
                            "from the start end",
                            "Steady rest")));
            if (whip.ends().bearsThrust()) {
                out.add(figure(
                        "Bows under the tailstock at",
                        bows(whip.buckling()),
                        turning().isFarFromBowing() ? whip.buckling().formatRoughly(units()) : "",
                        "Buckling"));
            }
        });
        return out;
    }

    private void speeds(List<FigureView> out, SpeedAdvice speeds) {
        out.add(speed("Turning", speeds.turning(), speeds.turningSteps()));
        out.add(speed("Roughing, while out of round", speeds.roughing(), speeds.roughingSteps()));
        out.add(figure("Set by", speeds.limit().text(), "", "Speed"));
    }

    private FigureView speed(String name, SpeedRange range, List<Speed> steps) {
        String listed = steps.isEmpty()
                ? ""
                : "; your lathe's " + steps.stream().map(TurningView::bare).collect(Collectors.joining(", "));
        return figure(
                name,
                range.from().about() + " to " + range.to().noFaster() + " rpm",
                range.surface() + listed,
                "Speed");
    }

    /** A figure that opens the working of that name. */
    private FigureView figure(String name, String value, String also, String working) {
        Optional<Working> found = turning().workings().stream()
                .filter(each -> each.figure().equals(working))
                .findFirst();
        return new FigureView(name, value, also, found);
    }

    private static String bare(Speed speed) {
        return format(Locale.ROOT, "%.0f", speed.rpm());
    }

    /** The wood's stiffness spreads by a fifth, a natural speed by half of that: two figures are sure. */
    private static String rpm(Speed speed) {
        return PlainNumber.toFigures(speed.rpm(), 2) + " rpm";
    }

    public List<Row> stages() {
        return turning().stages().stream().map(this::row).toList();
    }

    private Row row(Stage stage) {
        return new Row(
                stage.name(),
                whips(stage.first()),
                whips(stage.second()),
                stage.most().text(units()),
                bows(stage.buckling()));
    }

    private String whips(Speed natural) {
        return turning().isBeyondLathes(natural) ? "above any lathe's speed" : rpm(natural);
    }

    private String bows(Force push) {
        return turning().isBeyondTailstocks(push) ? "no tailstock presses so hard" : push.formatRoughly(units());
    }

    /** The cuts by part of the work, in order. */
    public Map<String, List<Line>> cuts() {
        CutDrawing drawing = new CutDrawing(plan.job().pattern(), PLACE_WIDTH, PLACE_TALLEST);
        Map<String, List<Line>> out = new LinkedHashMap<>();
        List<String> cautions = Cut.cautions(turning().cuts());
        for (int i = 0; i < cautions.size(); i++) {
            Cut cut = turning().cuts().get(i);
            out.computeIfAbsent(cut.phase().text(), phase -> new ArrayList<>())
                    .add(line(cut, cautions.get(i), drawing));
        }
        return out;
    }

    private Line line(Cut cut, String caution, CutDrawing drawing) {
        return new Line(
                cut.order(),
                cut.tool().text(),
                cut.setting().map(each -> each.format(units())).orElse(""),
                cut.what(),
                cut.why().orElse(""),
                caution,
                picture(cut, drawing).inline());
    }

    private static Svg picture(Cut cut, CutDrawing drawing) {
        return cut.strides().isEmpty()
                ? drawing.svg(cut.what(), cut.members(), cut.from(), cut.to(), cut.places())
                : drawing.steps(cut.what(), cut.strides(), cut.places());
    }

    public List<Warning> cautions() {
        return turning().cautions();
    }

    public List<Working> workings() {
        return turning().workings();
    }
}
