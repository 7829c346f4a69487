package turnalike.sheets;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.Stream;
import turnalike.job.Plan;
import turnalike.job.set.FrameFit;

/**
 * The sheets of a plan, in the order in which they are written and offered. A new sheet is one line here: the command line and the page know
 * them by this list alone.
 */
@SuppressWarnings("ImmutableEnumChecker") // the makers and askers are methods, which have no state
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
            FrameSheets::hasPicture,
            FrameSheets::picture),
    HUB_STRIP(
            "Strip round the hub",
            "Full size: wrap it round the hub and prick every place.",
            FrameSheets::hasHubStrip,
            FrameSheets::hubStrip),
    RIM_STRIP(
            "Strip inside the rim",
            "Full size: lay it round the inside of the rim and prick every place.",
            FrameSheets::hasRimStrip,
            FrameSheets::rimStrip),
    RIM_TEMPLATE(
            "Boring template for a rim",
            "Full size, from the front, in pages to join: lay it on the flat rim and bore along every place's line.",
            FrameSheets::hasRimTemplate,
            FrameSheets::rimTemplate),
    RIM_SEGMENT(
            "Rim segment",
            "Full size: saw every segment of the rim out by it.",
            FrameSheets::hasSegment,
            FrameSheets::segment),
    RAIL_STICK(
            "Stick for the rails",
            "Full size along the rail, in strips to join: prick every axis into both rails from it.",
            StandSheets::hasRailStick,
            StandSheets::railStick),
    LEG_GUIDE(
            "Boring guide for legs",
            "Sight line and lean at their true angles, to set a bevel by.",
            StandSheets::hasLegGuide,
            StandSheets::legGuide),
    SEAT_TEMPLATE(
            "Boring template for a seat",
            "Full size, from below, in pages to join: prick every hole through it and bore along its sight line.",
            StandSheets::hasSeatTemplate,
            StandSheets::seatTemplate),
    JOINTS(
            "Joints through the year",
            "How each tenon stands in its hole when the house is dry and when it is damp.",
            YearSheets::hasJoints,
            YearSheets::joints);

    private final String title;
    private final String use;
    private final Predicate<Plan> had;
    private final BiFunction<Plan, Paper, Sheet> making;

    PlanSheet(String title, String use, BiFunction<Plan, Paper, Sheet> making) {
        this(title, use, plan -> true, making);
    }

    PlanSheet(String title, String use, Predicate<Plan> had, BiFunction<Plan, Paper, Sheet> making) {
        this.title = title;
        this.use = use;
        this.had = had;
        this.making = making;
    }

    /** Those that this plan has: not every job has a frame with something to bore. */
    public static List<PlanSheet> of(Plan plan) {
        return Stream.of(values()).filter(each -> each.had.test(plan)).toList();
    }

    /**
     * What is told in place of a sheet that would take more pages than anybody joins, in sentences; none where every sheet is printed. Today the
     * boring template of a large rim, struck with a trammel.
     */
    public static List<String> insteadOf(Plan plan, Paper paper) {
        return FrameSheets.trammel(plan, paper).orElse(List.of());
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
        Sheet sheet = making.apply(plan, paper);
        boolean buildable = plan.frame().map(FrameFit::buildable).orElse(true);
        return buildable ? sheet : sheet.marked("The frame cannot be built: see the bench card");
    }
}
