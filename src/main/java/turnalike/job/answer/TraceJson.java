package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.job.fields.Json;
import turnalike.job.fields.MemberJson;
import turnalike.job.pieces.AgainstReport;
import turnalike.trace.Profile;
import turnalike.trace.Traced;
import turnalike.trace.TracedMember;
import turnalike.units.Length;

/** A traced original as the one JSON object that {@code trace --json} prints: lengths in mm. */
public final class TraceJson {
    private TraceJson() {}

    /**
     * {@return the object's text, ended by a line end}
     *
     * @param traced what was found
     */
    public static String print(Traced traced) {
        return Json.print(tree(traced));
    }

    /**
     * {@return the same with the {@code against} object: the piece held against its job}
     *
     * @param traced what was found
     * @param report how it stands against the job
     */
    public static String print(Traced traced, AgainstReport report) {
        ObjectNode root = tree(traced);
        AgainstJson.put(root.putObject("against"), report);
        return Json.print(root);
    }

    private static ObjectNode tree(Traced traced) {
        ObjectNode root = Json.object();
        root.put("source", traced.source().word());
        root.put("length_mm", mm(traced.original().profile().length()));
        List<Profile.Station> points = traced.outlinePoints();
        ArrayNode outline = root.putArray("outline");
        points.forEach(each -> outline.addArray().add(mm(each.place())).add(mm(each.radius())));
        uncertainty(root, traced, points);
        ArrayNode hidden = root.putArray("hidden");
        traced.original().profile().hidden().forEach(each -> hidden.addArray()
                .add(mm(each.from()))
                .add(mm(each.to())));
        ObjectNode scale = root.putObject("scale");
        traced.scale().mmPerUnit().ifPresentOrElse(mm -> scale.put("mm_per_px", mm), () -> scale.putNull("mm_per_px"));
        scale.put("from", traced.scale().from());
        root.set(
                "members",
                MemberJson.of(traced.run().run(), length -> JsonNodeFactory.instance.numberNode(mm(length))));
        miss(root.putObject("fit"), traced.run().miss());
        ArrayNode fits = root.putArray("member_fits");
        traced.run().members().forEach(each -> member(fits.addObject(), each));
        ArrayNode warnings = root.putArray("warnings");
        traced.warnings().forEach(warnings::add);
        return root;
    }

    /** One figure where all are alike, else one for each point. */
    private static void uncertainty(ObjectNode root, Traced traced, List<Profile.Station> points) {
        double least = traced.run().scatter().mm();
        boolean alike = points.stream()
                .allMatch(each ->
                        each.uncertainty().mm() == points.get(0).uncertainty().mm());
        if (alike) {
            root.put(
                    "uncertainty_mm",
                    mm(Length.ofMm(Math.max(least, points.get(0).uncertainty().mm()))));
            return;
        }
        ArrayNode each = root.putArray("uncertainty_mm");
        points.forEach(point -> each.add(mm(point.uncertainty())));
    }

    private static void member(ObjectNode node, TracedMember traced) {
        node.put("from_mm", mm(traced.from())).put("to_mm", mm(traced.to()));
        miss(node, traced.miss());
        node.put("stations", traced.miss().stations()).put("uncertain", traced.uncertain());
        ArrayNode guessed = node.putArray("guessed");
        traced.guessed().forEach(guessed::add);
    }

    private static void miss(ObjectNode node, TracedMember.Miss miss) {
        node.put("rms_mm", mm(miss.rms())).put("worst_mm", mm(miss.worst())).put("worst_at_mm", mm(miss.worstAt()));
    }

    /** Ten-thousandths of a millimetre are far below what any source tells. */
    private static double mm(Length length) {
        return Math.rint(length.mm() * 1e4) / 1e4;
    }
}
