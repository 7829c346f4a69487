package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import turnalike.job.MassScatter;
import turnalike.job.SpreadForecast;
import turnalike.stock.SetChance;

/** How finished weights will differ, as the {@code spread} of a plan's JSON. */
final class SpreadJson {
    /** So many chances are listed, from no spare on. */
    private static final int LISTED = 12;

    private SpreadJson() {}

    static void write(ObjectNode node, SpreadForecast forecast) {
        MassScatter scatter = forecast.scatter();
        node.put("turned_g", scatter.turned().grams());
        node.put("turned_pct", 100 * scatter.turnedShare());
        ArrayNode members = node.putArray("by_member_g");
        scatter.byMember().forEach(part -> members.add(part.grams()));
        node.put("wood_pct", 100 * MassScatter.WOOD);
        node.put("within_blank_pct", 100 * MassScatter.UNEVEN);
        node.put("mass_pct", forecast.job().tolerances().massPct());
        way(
                node.putObject("as_they_come"),
                forecast,
                forecast.chances().map(SpreadForecast.Chances::asTheyCome),
                scatter.shareAsItComes());
        way(
                node.putObject("by_weight"),
                forecast,
                forecast.chances().map(SpreadForecast.Chances::byWeight),
                scatter.shareByBlank());
    }

    private static void way(ObjectNode node, SpreadForecast forecast, Optional<SetChance> chances, double share) {
        node.put("sd_g", share * forecast.scatter().mass().grams());
        node.put("sd_pct", 100 * share);
        node.put("blanks", forecast.blanks());
        chances.ifPresent(each -> chances(node, forecast, each));
    }

    private static void chances(ObjectNode node, SpreadForecast forecast, SetChance chances) {
        node.put("chance", chances.ofBlanks(forecast.blanks(), forecast.job().lossRate()));
        chances.blanksFor(SpreadForecast.WANTED, forecast.job().lossRate())
                .ifPresent(blanks -> node.put("blanks_for_95_pct", blanks));
        ArrayNode list = node.putArray("good_spares");
        for (int spares = 0; spares <= LISTED; spares++) {
            list.addObject()
                    .put("spares", spares)
                    .put("chance", chances.ofGood(forecast.job().count() + spares));
        }
    }
}
