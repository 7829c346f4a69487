package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import turnalike.turning.BendingStrength;
import turnalike.turning.Cut;
import turnalike.turning.Held;
import turnalike.turning.SpeedAdvice;
import turnalike.turning.SpeedRange;
import turnalike.turning.Stage;
import turnalike.turning.Strain;
import turnalike.turning.Turning;
import turnalike.turning.Whip;
import turnalike.units.Force;
import turnalike.units.Speed;

/** The part of a plan that speaks of turning. What hangs on a stiffness that nobody knows is left out. */
final class TurningJson {
    private TurningJson() {}

    static void write(ObjectNode node, Turning turning) {
        turning.stiffness().ifPresent(stiffness -> {
            node.put("moe_mpa", stiffness.moeMpa());
            node.put("moe_over_shear", stiffness.moeOverShear());
        });
        node.put("force_n", turning.lathe().cutting().newtons());
        Held held = turning.lathe().held();
        node.putObject("held")
                .put("by", held.by().word())
                .put("at", held.at().word())
                .put("tailstock", held.tailstock());
        turning.whip().ifPresent(whip -> whip(node, whip));
        turning.whip()
                .ifPresent(whip -> node.put("steady_wanted", turning.steady().isPresent()));
        turning.strength().ifPresent(strength -> strength(node.putObject("strength"), strength));
        node.put("speed_offered", turning.offered().isPresent());
        turning.offered().ifPresent(speeds -> speeds(node, speeds));
        ArrayNode stages = node.putArray("stages");
        turning.stages().forEach(stage -> stage(stages.addObject(), stage));
        ArrayNode cuts = node.putArray("cuts");
        turning.cuts().forEach(cut -> cut(cuts.addObject(), cut));
        ArrayNode cautions = node.putArray("cautions");
        turning.cautions()
                .forEach(each -> cautions.addObject().put("where", each.where()).put("what", each.what()));
    }

    private static void whip(ObjectNode node, Whip whip) {
        node.putArray("natural_speeds_rpm")
                .add(whip.first().rpm())
                .add(whip.second().rpm());
        ArrayNode sags = node.putArray("sag_mm");
        for (Whip.Sag sag : whip.sags()) {
            ObjectNode each = sags.addObject();
            each.put("mm", sag.place().mm()).put("sag_mm", sag.sag().mm());
            if (sag.beyond()) {
                each.put("cannot_be_cut_unsupported", true);
            }
        }
        node.put("thrust_n", whip.thrust().map(Force::newtons).orElse(0.0));
        node.put("held_start", whip.ends().start().text());
        node.put("held_end", whip.ends().end().text());
        node.put("buckling_n", whip.buckling().newtons());
        node.put("steady_at_mm", whip.steady().mm());
        node.put("steady_raises_first_to_rpm", whip.second().rpm());
        node.put("elements", whip.elements());
        node.put("halving_changes_pct", 100 * whip.halvingChange());
    }

    private static void strength(ObjectNode node, BendingStrength strength) {
        node.put("rupture_mpa", strength.rupture().mpa());
        node.put("margin", strength.margin());
        node.put("allowed_mpa", strength.allowedMpa());
        ArrayNode strains = node.putArray("strains");
        for (Strain each : strength.strains()) {
            ObjectNode strain = strains.addObject();
            strain.put("member", each.member());
            strain.put("mm", each.place().mm());
            strain.put("diameter_mm", each.diameter().mm());
            strain.put("stress_mpa", each.stressMpa());
            strain.put("cut", each.cut());
            strain.put("force_at_mm", each.loadAt().mm());
            strain.put("borne", each.stressMpa() <= strength.allowedMpa());
            each.mends().ifPresent(mends -> {
                ObjectNode mend = strain.putObject("mends");
                mend.put("cut_last_mpa", mends.lastMpa());
                mend.put("support_at_mm", mends.support().mm());
                mend.put("supported_mpa", mends.supportedMpa());
                mend.put("force_n", mends.force().newtons());
                mend.put("diameter_mm", mends.diameter().mm());
            });
        }
    }

    private static void speeds(ObjectNode node, SpeedAdvice speeds) {
        range(node.putObject("speed_rpm"), speeds.turning(), speeds.turningSteps())
                .put("set_by", speeds.limit().text());
        range(node.putObject("roughing_rpm"), speeds.roughing(), speeds.roughingSteps());
        speeds.whipLimit().map(Speed::rpm).ifPresent(rpm -> node.put("whip_limit_rpm", rpm));
    }

    private static ObjectNode range(ObjectNode node, SpeedRange range, List<Speed> steps) {
        node.put("from", range.from().rpm());
        node.put("to", range.to().rpm());
        node.put("diameter_mm", range.diameter().mm());
        node.put("from_m_s", range.from().surfaceMetresPerSecond(range.diameter()));
        node.put("to_m_s", range.to().surfaceMetresPerSecond(range.diameter()));
        node.put("from_ft_min", range.from().surfaceFeetPerMinute(range.diameter()));
        node.put("to_ft_min", range.to().surfaceFeetPerMinute(range.diameter()));
        ArrayNode list = node.putArray("lathe_steps");
        steps.forEach(step -> list.add(step.rpm()));
        return node;
    }

    private static void stage(ObjectNode node, Stage stage) {
        node.put("name", stage.name());
        node.putArray("natural_speeds_rpm")
                .add(stage.first().rpm())
                .add(stage.second().rpm());
        node.put("buckling_n", stage.buckling().newtons());
        node.put("most_sag_mm", stage.most().sag().mm());
        node.put("thrust_n", stage.thrust().map(Force::newtons).orElse(0.0));
        node.put("thrust_borne", stage.borne());
        node.put("most_sag_at_mm", stage.most().place().mm());
    }

    private static void cut(ObjectNode node, Cut cut) {
        node.put("order", cut.order());
        node.put("phase", cut.phase().text());
        node.put("tool", cut.tool().text());
        // No setting is null and not left out, so that every cut has the same keys.
        node.putNull("setting_mm");
        cut.setting().ifPresent(each -> node.put("setting_mm", each.mm()));
        node.put("from_mm", cut.from().mm());
        node.put("to_mm", cut.to().mm());
        node.put("what", cut.what());
        ArrayNode places = node.putArray("places_mm");
        cut.places().forEach(place -> places.add(place.mm()));
        ArrayNode members = node.putArray("members");
        cut.members().forEach(members::add);
        Optional.of(cut.caution()).filter(text -> !text.isEmpty()).ifPresent(text -> node.put("caution", text));
        cut.natural().ifPresent(speed -> node.put("natural_speed_after_rpm", speed.rpm()));
        cut.why().ifPresent(why -> node.put("why", why));
    }
}
