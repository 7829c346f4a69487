package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import turnalike.job.Job;
import turnalike.job.pieces.AgainstReport;
import turnalike.job.pieces.ColumnTargets;
import turnalike.pieces.Likeness;
import turnalike.pieces.Measures;
import turnalike.trace.against.Comparison;
import turnalike.trace.against.Figure;
import turnalike.trace.against.MemberOff;
import turnalike.units.Length;

/** A piece held against its job, as the {@code against} object of {@code trace --json}: lengths in mm, what was not seen null. */
final class AgainstJson {
    private AgainstJson() {}

    static void put(ObjectNode root, AgainstReport report) {
        Comparison comparison = report.comparison();
        Job job = report.job();
        root.put("job", job.title());
        report.letter().ifPresent(letter -> root.put("of_length", letter));
        root.put("held", comparison.held().name().toLowerCase(Locale.ROOT))
                .put("turned", comparison.turned())
                .put("either_way", comparison.eitherWay())
                .put("hardly_this", comparison.isHardlyThis())
                .put("longer_mm", mm(comparison.longer()));
        ArrayNode words = root.putArray("words");
        report.words().forEach(words::add);
        ArrayNode notes = root.putArray("notes");
        report.notes().forEach(notes::add);
        ArrayNode members = root.putArray("members");
        comparison.members().forEach(each -> member(members.addObject(), each));
        measures(root, report);
        ObjectNode likeness = root.putObject("likeness");
        likeness.put("figure", report.likeness().figure()).put("by_chance", report.byChance());
        ArrayNode parts = likeness.putArray("parts");
        for (Likeness.Part part : report.likeness().parts()) {
            parts.addObject()
                    .put("column", part.name())
                    .put("off_mm", part.off())
                    .put("counts", part.counts());
        }
        ArrayNode deviation = root.putArray("deviation");
        for (Comparison.Off off : comparison.off()) {
            deviation
                    .addArray()
                    .add(mm(off.place()))
                    .add(mm(off.much().value()))
                    .add(mm(off.much().uncertainty()));
        }
    }

    private static void member(ObjectNode node, MemberOff member) {
        node.put("member", member.placed().number())
                .put("name", member.placed().member().title())
                .put("kind", member.placed().member().kind().word())
                .put("seen", member.isSeen())
                .put("stations", member.stations());
        figure(node, "place_off", member.stands());
        figure(node, "length_off", member.longer());
        figure(node, "diameter_off", member.thicker());
        figure(node, "depth_off", member.deeper());
        figure(node, "start_diameter_off", member.ends().get(0));
        figure(node, "end_diameter_off", member.ends().get(1));
    }

    private static void figure(ObjectNode node, String name, Optional<Figure> figure) {
        figure.ifPresentOrElse(
                each -> node.put(name + "_mm", mm(each.value())).put(name + "_uncertainty_mm", mm(each.uncertainty())),
                () -> node.putNull(name + "_mm"));
    }

    private static void measures(ObjectNode root, AgainstReport report) {
        Measures wanted = ColumnTargets.shape(report.job());
        ArrayNode out = root.putArray("measures");
        wanted.figures().forEach((column, asked) -> {
            ObjectNode node = out.addObject()
                    .put("column", column.format())
                    .put("name", ColumnTargets.name(report.job(), column))
                    .put("wanted_mm", Math.rint(asked * 1e4) / 1e4);
            Optional<Figure> found = Optional.ofNullable(report.figures().get(column));
            figure(node, "found", found);
            figure(node, "off", found.map(each -> each.less(Length.ofMm(asked))));
        });
    }

    private static double mm(Length length) {
        return Math.rint(length.mm() * 1e4) / 1e4;
    }
}
