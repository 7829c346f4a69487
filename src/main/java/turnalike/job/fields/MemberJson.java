package turnalike.job.fields;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Function;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.Member;
import turnalike.units.Length;

/** Members as a job file has them: their kind, and each of its keys that is not zero. */
public final class MemberJson {
    private MemberJson() {}

    /**
     * {@return the members as one list}
     *
     * @param run in order from the start end
     * @param written how a length is written
     */
    public static ArrayNode of(List<Member> run, Function<Length, JsonNode> written) {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        for (Member member : run) {
            ObjectNode node = out.addObject().put("kind", member.kind().word());
            member.sizes().lengths().forEach((key, length) -> {
                if (length.mm() != 0) {
                    node.set(key, written.apply(length));
                }
            });
            if (!member.sizes().points().isEmpty()) {
                ArrayNode points = node.putArray("points");
                for (FreeCurve.Point point : member.sizes().points()) {
                    points.addArray().add(written.apply(point.place())).add(written.apply(point.diameter()));
                }
            }
        }
        return out;
    }
}
