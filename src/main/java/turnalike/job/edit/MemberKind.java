package turnalike.job.edit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** The kinds of member with the sizes each is given by, in the order a turner meets them. */
public enum MemberKind {
    SQUARE("square", "side"),
    CYLINDER("cylinder", "diameter"),
    FILLET("fillet", "diameter"),
    TENON("tenon", "diameter", "chamfer"),
    TAPER("taper", "from", "to"),
    SWELL("swell", "from", "middle", "to"),
    BEAD("bead", "root", "crown"),
    HALF_BEAD("half-bead", "from", "to"),
    COVE("cove", "rim", "bottom"),
    HALF_COVE("half-cove", "from", "to"),
    OGEE("ogee", "from", "to"),
    REVERSE_OGEE("reverse-ogee", "from", "to"),
    VEE("vee", "rim", "bottom"),
    GROOVE("groove", "rim", "bottom"),
    CURVE("curve");

    private final String word;

    @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
    private final List<String> sizes;

    MemberKind(String word, String... sizes) {
        this.word = word;
        this.sizes = List.of(sizes);
    }

    /** The word in a job file. */
    public String word() {
        return word;
    }

    /** The keys of its diameters (and of a tenon's chamfer), besides its length; none for a curve, which is given by points. */
    public List<String> sizes() {
        return sizes;
    }

    /** The kind written so. */
    public static Optional<MemberKind> find(String word) {
        for (MemberKind kind : values()) {
            if (kind.word.equals(word)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /**
     * The room a new member has.
     *
     * @param length along the piece
     * @param before the diameter where it starts
     * @param after the diameter where it ends
     * @param stock the blank's size, which nothing may exceed
     */
    record Room(Length length, Length before, Length after, Length stock, UnitSystem units) {
        private Length smaller() {
            return before.compareTo(after) < 0 ? before : after;
        }

        private Length larger() {
            return before.compareTo(after) < 0 ? after : before;
        }

        private String text(Length length) {
            return Spelling.of(length, units);
        }

        private Length tidy(Length length) {
            return Spelling.tidy(length, units);
        }
    }

    /** A member of this kind that can exist there; its proportions are a place to start from, common practice without a source. */
    ObjectNode blank(Room room) {
        ObjectNode out = JobTree.object().put("kind", word);
        if (this == CURVE) {
            points(out, room);
            return out;
        }
        out.put("length", room.text(room.length()));
        for (int i = 0; i < sizes.size(); i++) {
            if (this != SQUARE && !sizes.get(i).equals("chamfer")) {
                out.put(sizes.get(i), room.text(size(sizes.get(i), room)));
            }
        }
        return out;
    }

    private static Length size(String key, Room room) {
        Length step = Spelling.step(room.units());
        Length thin = room.smaller().minus(room.stock().times(0.9)).isPositive()
                ? room.tidy(room.stock().times(0.8))
                : room.smaller();
        return switch (key) {
            case "root" -> thin;
            case "crown" -> between(room.tidy(thin.times(1.3)), thin.plus(step.times(0.5)), room.stock());
            case "rim" -> room.larger();
            case "bottom" ->
                between(
                        room.tidy(room.larger().times(0.75)),
                        step.times(0.25),
                        room.larger().times(0.9));
            case "middle" -> between(room.tidy(room.smaller().times(1.1)), room.smaller(), room.stock());
            case "to" -> room.after();
            default -> room.before();
        };
    }

    private static Length between(Length length, Length least, Length most) {
        Length raised = length.compareTo(least) < 0 ? least : length;
        return raised.compareTo(most) > 0 ? most : raised;
    }

    private static void points(ObjectNode out, Room room) {
        Length middle = room.smaller().times(0.85);
        var points = out.putArray("points");
        points.addArray().add("0").add(room.text(room.before()));
        points.addArray().add(room.text(room.length().times(0.5))).add(room.text(room.tidy(middle)));
        points.addArray().add(room.text(room.length())).add(room.text(room.after()));
    }
}
