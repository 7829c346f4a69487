package turnalike.job.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.job.Job;
import turnalike.job.kept.JobText;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKey;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * The whole pattern made larger or smaller, its blank with it. Every size comes out to 1/64 in or 0.1 mm.
 *
 * @param what of it
 * @param pct what each size becomes, in hundredths of what it was; 10 to 1000, else {@link IllegalArgumentException}
 * @param tenonsStay whether tenons keep their sizes, since their holes are bored with the bits there are
 */
public record ScaleEdit(What what, double pct, boolean tenonsStay) implements JobEdit {
    private static final String CHAMFER = "chamfer";

    /** Which sizes are scaled. */
    public enum What {
        /** Lengths and diameters, so that the piece keeps its shape. */
        ALL,
        /** What lies along the axis. */
        LENGTHS,
        /** What lies across it. */
        DIAMETERS;

        /** {@return its word in a form} */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * {@return the one of that word, if there is one}
         *
         * @param word as a form sends it
         */
        public static Optional<What> find(String word) {
            return List.of(values()).stream()
                    .filter(each -> each.word().equals(word))
                    .findFirst();
        }
    }

    public ScaleEdit {
        if (!(pct >= 10 && pct <= 1000)) {
            throw new IllegalArgumentException("a pattern is scaled to 10 to 1000 %%, was %s".formatted(pct));
        }
    }

    @Override
    public String what(JobText before) {
        String of = what == What.ALL ? "the pattern" : "its " + what.word();
        return String.format(
                Locale.ROOT, "scale %s to %s %%%s", of, number(), tenonsStay ? ", tenons as they are" : "");
    }

    private String number() {
        return pct == Math.rint(pct) ? Long.toString(Math.round(pct)) : Double.toString(pct);
    }

    @Override
    public JobText.Read on(JobText text) {
        JobTree tree = JobTree.of(text);
        Job job = text.job();
        List<Member> members = job.pattern().members();
        if (what != What.DIAMETERS) {
            RunLengths.set(
                    tree,
                    job,
                    members.stream()
                            .map(each -> stays(each) ? each.length() : scaled(each.length(), job.units()))
                            .toList());
        }
        if (what != What.LENGTHS) {
            for (int i = 0; i < members.size(); i++) {
                if (!stays(members.get(i))) {
                    across(tree.member(i + 1), members.get(i), job.units());
                }
            }
            ObjectNode stock = (ObjectNode) tree.pattern().get("stock");
            stock.put("size", LengthSpelling.of(scaled(job.pattern().stock().size(), job.units()), job.units()));
        }
        return tree.read();
    }

    private boolean stays(Member member) {
        return tenonsStay && member.lengthInHole().isPositive();
    }

    private Length scaled(Length length, UnitSystem units) {
        return pct == 100 ? length : RunLengths.rounded(length.times(pct / 100), units);
    }

    private void across(ObjectNode tree, Member member, UnitSystem units) {
        for (MemberKey key : member.kind().keys()) {
            boolean along = key.name().equals(MemberKey.LENGTH) || (key.name().equals(CHAMFER) && what != What.ALL);
            switch (key.type()) {
                case LENGTH -> {
                    Optional<Length> size = member.sizes().find(key.name());
                    if (!along
                            && tree.has(key.name())
                            && size.isPresent()
                            && size.get().isPositive()) {
                        tree.put(key.name(), LengthSpelling.of(scaled(size.get(), units), units));
                    }
                }
                case POINTS ->
                    points((ArrayNode) tree.get(key.name()), member.sizes().points(), units);
            }
        }
    }

    private void points(ArrayNode pairs, List<FreeCurve.Point> points, UnitSystem units) {
        for (int i = 0; i < points.size(); i++) {
            JsonNode size =
                    pairs.textNode(LengthSpelling.of(scaled(points.get(i).diameter(), units), units));
            ((ArrayNode) pairs.get(i)).set(1, size);
        }
    }
}
