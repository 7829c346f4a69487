package turnalike.sheets;

import java.util.SortedMap;
import java.util.TreeMap;
import turnalike.drawing.dxf.PieceDxf;
import turnalike.job.Plan;
import turnalike.pattern.Pattern;

/** What a laser or router takes of a plan. */
public final class PlanDxf {
    private PlanDxf() {}

    /** Each file's text by its name, in order of the names. */
    public static SortedMap<String, String> files(Plan plan) {
        Pattern pattern = plan.job().pattern();
        SortedMap<String, String> out = new TreeMap<>();
        out.put("outline.dxf", PieceDxf.outline(pattern));
        out.put("checking-template.dxf", PieceDxf.template(pattern, plan.job().units()));
        return out;
    }
}
