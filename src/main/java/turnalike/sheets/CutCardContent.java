package turnalike.sheets;

import java.util.List;
import turnalike.pattern.Pattern;
import turnalike.turning.Cut;
import turnalike.units.UnitSystem;

/**
 * What the card of the order of cuts says.
 *
 * @param title the job's name
 * @param subtitle one line under it
 * @param units the job's own; the other stands smaller beside
 * @param facts speeds and places worth a large letter
 * @param cuts in their order
 * @param cautions each a sentence or two
 */
public record CutCardContent(
        String title,
        String subtitle,
        UnitSystem units,
        Pattern pattern,
        List<BenchCardContent.Fact> facts,
        List<Cut> cuts,
        List<String> cautions) {
    public CutCardContent {
        facts = List.copyOf(facts);
        cuts = List.copyOf(cuts);
        cautions = List.copyOf(cautions);
    }
}
