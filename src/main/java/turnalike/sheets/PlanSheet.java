package turnalike.sheets;

import java.util.function.BiFunction;
import turnalike.job.Plan;

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
            PlanSheets::cutOrder);

    private final String title;
    private final String use;
    private final BiFunction<Plan, Paper, Sheet> making;

    PlanSheet(String title, String use, BiFunction<Plan, Paper, Sheet> making) {
        this.title = title;
        this.use = use;
        this.making = making;
    }

    /** What it is called on the page. */
    public String title() {
        return title;
    }

    /** What it is for, a sentence or two. */
    public String use() {
        return use;
    }

    /** The sheet of that plan. */
    public Sheet of(Plan plan, Paper paper) {
        return making.apply(plan, paper);
    }
}
