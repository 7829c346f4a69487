package turnalike.job.read;

import static java.util.Map.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import turnalike.pattern.Bead;
import turnalike.pattern.Cove;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Fault;
import turnalike.pattern.Fillet;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.Groove;
import turnalike.pattern.HalfBead;
import turnalike.pattern.HalfCove;
import turnalike.pattern.Member;
import turnalike.pattern.Ogee;
import turnalike.pattern.Placed;
import turnalike.pattern.ReverseOgee;
import turnalike.pattern.Square;
import turnalike.pattern.Swell;
import turnalike.pattern.Taper;
import turnalike.pattern.Tenon;
import turnalike.pattern.Vee;
import turnalike.units.Length;

/** Members from JSON. A new kind is one line in the table and, at most, one method. */
final class MemberReader {
    private interface Kind {
        Optional<Member> read(Fields fields, Details details, Length stockSize);
    }

    private interface Faulter2 {
        List<Fault> of(Length length, Length a);
    }

    private interface Maker2 {
        Member of(Length length, Length a, Details details);
    }

    private interface Faulter3 {
        List<Fault> of(Length length, Length a, Length b);
    }

    private interface Maker3 {
        Member of(Length length, Length a, Length b, Details details);
    }

    private static final Map<String, Kind> KINDS = Map.ofEntries(
            entry("square", MemberReader::square),
            entry("cylinder", two("diameter", Cylinder::faults, Cylinder::new)),
            entry("fillet", two("diameter", Fillet::faults, Fillet::new)),
            entry("tenon", MemberReader::tenon),
            entry("taper", three("from", "to", Taper::faults, Taper::new)),
            entry("swell", MemberReader::swell),
            entry("bead", three("root", "crown", Bead::faults, Bead::new)),
            entry("half-bead", three("from", "to", HalfBead::faults, HalfBead::new)),
            entry("cove", three("rim", "bottom", Cove::faults, Cove::new)),
            entry("half-cove", three("from", "to", HalfCove::faults, HalfCove::new)),
            entry("ogee", three("from", "to", Ogee::faults, Ogee::new)),
            entry("reverse-ogee", three("from", "to", ReverseOgee::faults, ReverseOgee::new)),
            entry("vee", three("rim", "bottom", Vee::faults, Vee::new)),
            entry("groove", three("rim", "bottom", Groove::faults, Groove::new)),
            entry("curve", MemberReader::curve));

    private MemberReader() {}

    /** The member numbered from 1, if it can exist; else its problems are told. */
    static Optional<Member> read(int number, JsonNode node, Length stockSize, Reading reading) {
        if (!(node instanceof ObjectNode object)) {
            reading.problem(
                    "member " + number,
                    "is no object, was " + Fields.excerpt(node),
                    "write it like {\"kind\": \"bead\", …}");
            return Optional.empty();
        }
        String title = title(object);
        Fields fields = new Fields(Placed.where(number, title), object, reading);
        Optional<Kind> kind = fields.choice(
                "kind",
                "one of " + String.join(", ", new TreeSet<>(KINDS.keySet())),
                word -> Optional.ofNullable(KINDS.get(word)));
        Details details = new Details(fields.findText("name").filter(name -> !name.isBlank()), fields.flag("by_eye"));
        Optional<Member> member = kind.flatMap(each -> each.read(fields, details, stockSize));
        if (kind.isPresent()) {
            fields.refuseUnknown(); // without a kind nobody knows which keys belong
        }
        return member;
    }

    private static String title(ObjectNode node) {
        String name = node.path("name").asText("");
        String title = name.isBlank() ? node.path("kind").asText("") : name;
        return title.isBlank()
                ? "no kind"
                : Fields.excerpt(node.textNode(title)).replaceAll("^'|'$", "");
    }

    private static Kind two(String key, Faulter2 faults, Maker2 maker) {
        return (fields, details, stockSize) -> {
            Optional<Length> length = fields.length("length");
            Optional<Length> a = fields.length(key);
            return both(
                    length,
                    a,
                    (l, d) -> sound(fields, faults.of(l, d)) ? Optional.of(maker.of(l, d, details)) : Optional.empty());
        };
    }

    private static Kind three(String keyA, String keyB, Faulter3 faults, Maker3 maker) {
        return (fields, details, stockSize) -> {
            Optional<Length> length = fields.length("length");
            Optional<Length> a = fields.length(keyA);
            Optional<Length> b = fields.length(keyB);
            if (length.isEmpty() || a.isEmpty() || b.isEmpty()) {
                return Optional.empty();
            }
            return sound(fields, faults.of(length.get(), a.get(), b.get()))
                    ? Optional.of(maker.of(length.get(), a.get(), b.get(), details))
                    : Optional.empty();
        };
    }

    private interface Both {
        Optional<Member> of(Length length, Length other);
    }

    private static Optional<Member> both(Optional<Length> one, Optional<Length> other, Both maker) {
        return one.flatMap(first -> other.flatMap(second -> maker.of(first, second)));
    }

    private static Optional<Member> square(Fields fields, Details details, Length stockSize) {
        Optional<Length> length = fields.length("length");
        Optional<Length> side = fields.lengthOr("side", stockSize);
        return both(
                length,
                side,
                (l, s) ->
                        sound(fields, Square.faults(l, s)) ? Optional.of(new Square(l, s, details)) : Optional.empty());
    }

    private static Optional<Member> tenon(Fields fields, Details details, Length stockSize) {
        Optional<Length> length = fields.length("length");
        Optional<Length> diameter = fields.length("diameter");
        Optional<Length> chamfer = fields.lengthOr("chamfer", Length.ZERO);
        Optional<Length> hole = fields.has("hole") ? fields.length("hole") : Optional.empty();
        return both(
                length,
                diameter,
                (l, d) -> chamfer.flatMap(
                        c -> sound(fields, Tenon.faults(l, d, c)) && sound(fields, Tenon.holeFaults(d, hole))
                                ? Optional.of(new Tenon(l, d, c, hole, details))
                                : Optional.empty()));
    }

    private static Optional<Member> swell(Fields fields, Details details, Length stockSize) {
        Optional<Length> length = fields.length("length");
        Optional<Length> from = fields.length("from");
        Optional<Length> middle = fields.length("middle");
        Optional<Length> to = fields.length("to");
        return both(
                length,
                middle,
                (l, m) -> both(
                        from,
                        to,
                        (f, t) -> sound(fields, Swell.faults(l, f, m, t))
                                ? Optional.of(new Swell(l, f, m, t, details))
                                : Optional.empty()));
    }

    private static Optional<Member> curve(Fields fields, Details details, Length stockSize) {
        String mend = "give pairs like [[0, 20], [15, 24.5]]: place from the member's start, then diameter";
        Optional<List<JsonNode>> nodes = fields.list("points", mend);
        if (nodes.isEmpty()) {
            return Optional.empty();
        }
        List<FreeCurve.Point> points = new ArrayList<>();
        for (int i = 0; i < nodes.get().size(); i++) {
            String place = "point " + (i + 1);
            JsonNode pair = nodes.get().get(i);
            if (!pair.isArray() || pair.size() != 2) {
                fields.reading().problem(fields.at(place), "is no pair, was " + Fields.excerpt(pair), mend);
                continue;
            }
            Optional<Length> x = fields.lengthAt(place + " place", pair.get(0));
            Optional<Length> d = fields.lengthAt(place + " diameter", pair.get(1));
            x.ifPresent(at -> d.ifPresent(across -> points.add(new FreeCurve.Point(at, across))));
        }
        boolean all = points.size() == nodes.get().size();
        return all && sound(fields, FreeCurve.faults(points))
                ? Optional.of(new FreeCurve(points, details))
                : Optional.empty();
    }

    private static boolean sound(Fields fields, List<Fault> faults) {
        for (Fault fault : faults) {
            fields.reading().problem(fields.at(fault.key()), fault.what().in(fields.units()), fault.mend());
        }
        return faults.isEmpty();
    }
}
