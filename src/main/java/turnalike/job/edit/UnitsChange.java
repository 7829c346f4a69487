package turnalike.job.edit;

import turnalike.job.kept.JobText;
import turnalike.units.UnitSystem;

/**
 * The job read and printed in other units. Every length that carries no unit is given the one it was written in, so that nothing changes
 * its size.
 *
 * @param units from now on
 */
public record UnitsChange(UnitSystem units) implements JobEdit {
    @Override
    public String what(JobText before) {
        return "work in " + (units == UnitSystem.INCH ? "inches" : "millimetres");
    }

    @Override
    public JobText.Read on(JobText text) {
        JobTree tree = JobTree.of(text);
        UnitSystem old = text.job().units();
        if (old != units) {
            OwnUnits.give(tree.root(), old);
            tree.root().put("units", units.symbol());
        }
        return tree.read();
    }
}
