package turnalike.web.job;

import gg.jte.Content;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import turnalike.drawing.piece.PhotoBehind;
import turnalike.drawing.piece.ShadedSpindle;
import turnalike.drawing.piece.SpindleDrawing;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPhoto;
import turnalike.job.set.FrameFit;
import turnalike.job.set.Misfit;
import turnalike.pattern.MemberKind;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Warning;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.units.Working;
import turnalike.web.kit.PutTogether;
import turnalike.web.kit.Shell;

/** One job as the page shows it. */
public final class JobView implements PutTogether {
    private final KeptJob kept;
    private final Optional<KeptPhoto> photo;
    private final Plan plan;
    private final boolean isFinal;
    private final Glance glance;
    private final RefusedEdit attempt;

    /**
     * What of the job is looked at.
     *
     * @param member the selected one, from 1
     * @param widthMm of the room for the drawing
     * @param scale a millimetre of wood as drawn; empty for as large as there is room
     * @param parts those that are wanted
     */
    record Glance(int member, double widthMm, OptionalDouble scale, Parts parts) {
        Glance(int member, double widthMm) {
            this(member, widthMm, OptionalDouble.empty(), Parts.whole());
        }
    }

    JobView(KeptJob kept, Plan plan, boolean isFinal, Glance glance, RefusedEdit attempt) {
        this.kept = kept;
        this.photo = KeptPhoto.of(kept);
        this.plan = plan;
        this.isFinal = isFinal;
        this.glance = glance;
        this.attempt = attempt;
    }

    private Job job() {
        return plan.job();
    }

    private UnitSystem units() {
        return job().units();
    }

    public String address() {
        return "/jobs/" + kept.id().text();
    }

    public String title() {
        return job().title();
    }

    /** Which state of the job this is; sent with each edit, so that two people's edits can be told apart. */
    public int version() {
        return kept.times().steps();
    }

    public Optional<String> undo() {
        return kept.undo();
    }

    public Optional<String> redo() {
        return kept.redo();
    }

    public String symbol() {
        return units().symbol();
    }

    /** The other units' symbol. */
    public String otherSymbol() {
        return units().other().symbol();
    }

    /** How wide the drawing is, in the browser's pixels of 1/96 in. */
    public int widthPx() {
        return (int) Math.round(glance.widthMm() * 96 / Length.MM_PER_INCH);
    }

    /** How large a millimetre of wood is drawn. */
    public String scale() {
        return Double.toString(spindle().scale().paperOverWood());
    }

    /** Where on the drawing the head end lies, in its millimetres. */
    public String side() {
        return Double.toString(SpindleDrawing.side().mm());
    }

    /** A member as it is read aloud: what it is, where it stands, and its diameters. */
    public String spoken(PlacedMember placed) {
        String sizes = placed.member().diameters().stream()
                .map(each -> "%s %s"
                        .formatted(each.key().replace('_', ' '), each.size().format(units())))
                .distinct()
                .collect(Collectors.joining(", "));
        return "%d %s, from %s to %s%s"
                .formatted(
                        placed.number(),
                        placed.member().title(),
                        placed.start().format(units()),
                        placed.end().format(units()),
                        sizes.isEmpty() ? "" : ", " + sizes);
    }

    private SpindleDrawing spindle() {
        Length width = Length.ofMm(glance.widthMm());
        SpindleDrawing filling = SpindleDrawing.filling(job().pattern(), units(), width, Length.ofMm(TALLEST_MM));
        return glance.scale().isPresent() ? filling.at(glance.scale().getAsDouble()) : filling;
    }

    /** The spindle on the lathe. */
    public String drawing() {
        return spindle()
                .holding(glance.member())
                .touching(plan.frame().flatMap(FrameFit::touches))
                .before(photo().map(each -> new PhotoBehind(photoAddress(each), each)))
                .svg()
                .inline();
    }

    /** The photograph that the pattern was copied from, if one is kept. */
    public Optional<KeptPhoto> photo() {
        return photo;
    }

    /** Where it is; another one has another address. */
    public String photoAddress(KeptPhoto photo) {
        return "%s/photo.jpg?%08x".formatted(address(), photo.hashCode());
    }

    /** The piece as it will look. */
    public String look() {
        String title = job().pattern().name() + ", in light and shade";
        return ShadedSpindle.svg(
                        job().pattern().outline(), title, Length.ofMm(glance.widthMm()), Length.ofMm(TALLEST_MM + 30))
                .inline();
    }

    private static final double TALLEST_MM = 60;

    public List<PlacedMember> run() {
        return job().pattern().placed();
    }

    public int selected() {
        return glance.member();
    }

    public boolean isSelected(PlacedMember placed) {
        return placed.number() == glance.member();
    }

    /** The selected member. */
    public PlacedMember member() {
        return run().get(glance.member() - 1);
    }

    public List<MemberKind> kinds() {
        return MemberKind.all();
    }

    private List<FieldView> memberFields() {
        return attempt.onto("member", MemberForm.of(kept.text(), glance.member()));
    }

    private List<JobForm.Group> groups() {
        return JobForm.after(attempt, parts().forms().of(kept.text()));
    }

    /** The fields of the page, read once for all that shows them. */
    public Panels panels() {
        return new Panels(groups(), memberFields());
    }

    /** Which of the page's parts are sent. */
    public Parts parts() {
        return glance.parts();
    }

    /**
     * A part of the page.
     *
     * @param id of its element; what each one shows is told by {@link ShownOnPage}
     * @param content the element with what is in it
     * @return what stands for it until the page is put together
     */
    public String part(Shell shell, String id, Panels panels, Content content) {
        return parts().mark(ShownOnPage.of(this, shell.language(), id, panels), content);
    }

    @Override
    public byte[] onto(String page) {
        return parts().onto(page);
    }

    Plan plan() {
        return plan;
    }

    Glance glance() {
        return glance;
    }

    /** What to do next. */
    public NextDeed next() {
        return NextDeed.of(kept, plan, unbuildable().isEmpty());
    }

    /** What was refused and belongs to no field that is shown. */
    public List<Problem> problems() {
        if (attempt.problems().isEmpty()) {
            return List.of();
        }
        List<FieldView> fields = new ArrayList<>(memberFields());
        groups().forEach(group -> fields.addAll(group.fields()));
        return attempt.others(fields);
    }

    /** Why the frame cannot be built so, a sentence each: what is said first. */
    public List<String> unbuildable() {
        return plan.frame().stream()
                .flatMap(fit -> fit.misfits().stream())
                .filter(Misfit::forbids)
                .map(Misfit::sentence)
                .toList();
    }

    /** What else to know before turning; a plan warns of what cannot be built before all else, and that stands at the head of the page. */
    public List<Warning> warnings() {
        return plan.warnings().subList(unbuildable().size(), plan.warnings().size());
    }

    /** What the piece comes to, each figure with its working. */
    public List<FigureView> figures() {
        return PieceFigures.of(plan);
    }

    /** What to buy and mill, each figure with its working. */
    public List<FigureView> stock() {
        return StockFigures.of(plan.stock(), units(), job().tolerances().weighing());
    }

    /** Where milling it can hurt. */
    public List<Problem> stockCautions() {
        return plan.stock().cautions();
    }

    /** How what has no place of its own on the page was found. */
    public List<Working> workings() {
        List<Working> placed = new ArrayList<>(plan.stock().workings(units()));
        placed.add(plan.solid().working());
        placed.add(job().wood().working());
        List<Working> out = new ArrayList<>(plan.workingsBeforeTurning());
        out.removeAll(placed);
        return out;
    }

    /** Whether a longer search may still find better settings. */
    public boolean isFinal() {
        return isFinal;
    }

    /** The settings of the dividers and calipers. */
    public SettingsView settings() {
        return new SettingsView(plan, isFinal, glance.widthMm());
    }
}
