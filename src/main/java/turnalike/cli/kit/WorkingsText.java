package turnalike.cli.kit;

import java.util.List;
import turnalike.units.Working;

/** How the figures were found, as text. */
final class WorkingsText {
    private WorkingsText() {}

    public static String text(List<Working> workings) {
        StringBuilder out = new StringBuilder("\nHow this was found\n");
        for (Working working : workings) {
            out.append("  ").append(working.figure()).append('\n');
            out.append("    how:    ").append(working.how()).append('\n');
            out.append("    source: ").append(working.source()).append('\n');
            out.append("    sure:   ").append(working.sureness()).append('\n');
        }
        return out.toString();
    }
}
