package turnalike.web.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import turnalike.job.edit.MemberKind;
import turnalike.job.edit.Written;
import turnalike.job.kept.JobText;
import turnalike.units.UnitSystem;
import turnalike.web.job.FieldView.Look;

/** The form of one member. */
final class MemberForm {
    /** What may be sent; anything else is passed over. */
    static final Set<String> FIELDS = Set.of(
            "name",
            "length",
            "side",
            "diameter",
            "chamfer",
            "from",
            "middle",
            "to",
            "root",
            "crown",
            "rim",
            "bottom",
            "points",
            "by_eye");

    private static final Map<String, String> LABELS = Map.of(
            "side", "Across the flats",
            "diameter", "Diameter",
            "chamfer", "Chamfer",
            "from", "Diameter, head end",
            "middle", "Diameter, middle",
            "to", "Diameter, tail end",
            "root", "Diameter at its foot",
            "crown", "Diameter at its crown",
            "rim", "Diameter at its rim",
            "bottom", "Diameter at its bottom");

    private MemberForm() {}

    static List<FieldView> of(JobText text, int number) {
        Map<String, String> written = Written.member(text, number);
        MemberKind kind = MemberKind.find(written.getOrDefault("kind", "")).orElseThrow();
        UnitSystem units = text.job().units();
        List<FieldView> out = new ArrayList<>();
        if (kind == MemberKind.CURVE) {
            out.add(FieldView.of(
                    Look.LINES, "points", "Place ; diameter, a pair a line", written.getOrDefault("points", "")));
        } else {
            out.add(FieldView.length("length", "Length", written.getOrDefault("length", ""), units));
        }
        for (String key : kind.sizes()) {
            FieldView field =
                    FieldView.length(key, LABELS.getOrDefault(key, key), written.getOrDefault(key, ""), units);
            out.add(
                    key.equals("side")
                            ? field.hint("left empty: the stock's size")
                            : field.hint(key.equals("chamfer") ? "left empty: none" : ""));
        }
        out.add(FieldView.of(Look.TEXT, "name", "Name", written.getOrDefault("name", "")));
        out.add(FieldView.of(Look.TICK, "by_eye", "Cut by eye, not measured", written.getOrDefault("by_eye", "")));
        return out;
    }
}
