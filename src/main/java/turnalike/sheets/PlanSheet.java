package turnalike.sheets;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import turnalike.job.Plan;
import turnalike.job.set.FrameFit;

/**
 * The sheets of a plan, in the order in which they are written and offered. A new sheet is one line here: the command line and the page know
 * them by this list alone.
 */
@SuppressWarnings("ImmutableEnumChecker") // the makers are methods, which have no state
public enum PlanSheet {
    BENCH_CARD("Bench card", "Hangs by the lathe: the piece, its settings and sizes.", PlanSheets::benchCard),
    MARKING_STICK(
            "Marking stick",
            "Full size, in strips to join. Lay a rule on the check bar before you trust it.",
            PlanSheets::markingStick),
    CHECKING_TEMPLATE(
            "Checking template",
            "Half the outline at full size: glue to card, cut, and hold it to the piece with the lathe stopped.",
            PlanSheets::checkingTemplate),
    CUT_ORDER(
            "Order of cuts",
            "Each cut with its tool, setting and place, in type to read at the lathe.",
            PlanSheets::cutOrder),
    FRAME(
            "Frame",
            "As it will stand, to scale, with what is left between the pieces and where to bore.",
            FrameSheets::picture,
            true),
    HUB_STRIP(
            "Strip round the hub",
            "Full size: wrap it round the hub and prick every place.",
            FrameSheets::hubStrip,
            true),
    RIM_STRIP(
            "Strip inside the rim",
            "Full size: lay it round the inside of the rim and prick every place.",
            FrameSheets::rimStrip,
            true),
    RIM_SEGMENT("Rim segment", "Full size: saw every segment of the rim out by it.", FrameSheets::segment, true),
    RAIL_STICK(
            "Stick for the rails",
            "Full size along the rail, in strips to join: prick every axis into both rails from it.",
            StandSheets::railStick,
            true),
    LEG_GUIDE(
            "Boring guide for legs",
            "Sight line and lean at their true angles, to set a bevel by.",
            StandSheets::legGuide,
            true);

    private final String title;
    private final String use;
    private final boolean ofSome;
    private final BiFunction<Plan, Paper, Optional<Sheet>> making;

    PlanSheet(String title, String use, BiFunction<Plan, Paper, Sheet> making) {
        this(title, use, (plan, paper) -> Optional.of(making.apply(plan, paper)), false);
    }

    PlanSheet(String title, String use, BiFunction<Plan, Paper, Optional<Sheet>> making, boolean ofSome) {
        this.title = title;
        this.use = use;
        this.making = making;
        this.ofSome = ofSome;
    }

    /** Those that this plan has: not every job has a frame with something to bore. */
    public static List<PlanSheet> of(Plan plan) {
        return Stream.of(values())
                .filter(each -> !each.ofSome
                        || (each.making.apply(plan, Paper.A4).isPresent()
                                && each.making.apply(plan, Paper.LETTER).isPresent()))
                .toList();
    }

    /** What it is called on the page. */
    public String title() {
        return title;
    }

    /** What it is for, a sentence or two. */
    public String use() {
        return use;
    }

    /** The sheet of that plan, which has it; where the frame cannot be built, the sheet says so. */
    public Sheet of(Plan plan, Paper paper) {
        Sheet sheet = making.apply(plan, paper).orElseThrow();
        boolean buildable = plan.frame().map(FrameFit::buildable).orElse(true);
        return buildable ? sheet : sheet.marked("The frame cannot be built: see the bench card");
    }
}
