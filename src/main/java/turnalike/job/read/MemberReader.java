package turnalike.job.read;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Reading;
import turnalike.job.fields.Values;
import turnalike.pattern.Details;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKey;
import turnalike.pattern.MemberKind;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Sizes;
import turnalike.units.Length;

/** Members from JSON, each by the keys of its kind. */
final class MemberReader {
    private static final Pattern QUOTES_ROUND = Pattern.compile("^'|'$");

    /** Words for what a plane gives a leg, and no lathe. */
    private static final Pattern FLATS = Pattern.compile("(?i)octagon|hexagon|facet|flat|polygon");

    private static final String PLANED =
            "; what has flats and tapers is planed: give it as a taper over its corners, or leave it square";

    private MemberReader() {}

    /** The member numbered from 1, if it can exist; else its problems are told. */
    static Optional<Member> read(int number, JsonNode node, Length stockSize, Reading reading) {
        if (!(node instanceof ObjectNode object)) {
            reading.problem(
                    "member " + number,
                    "is no object, was " + Values.excerpt(node),
                    "write it like {\"kind\": \"bead\", …}");
            return Optional.empty();
        }
        String title = title(object);
        Fields fields = new Fields(PlacedMember.where(number, title), object, reading);
        String words = "one of " + words() + (isPlaned(object) ? PLANED : "");
        Optional<MemberKind> kind = fields.choice("kind", words, MemberKind::find);
        Details details = new Details(
                fields.findText(MemberKey.NAME).filter(name -> !name.isBlank()), fields.flag(MemberKey.BY_EYE));
        Optional<Member> member = kind.flatMap(each -> sizes(each, fields, stockSize)
                .filter(sizes -> fields.sound(each.faults(sizes)))
                .map(sizes -> each.make(sizes.with(details))));
        if (kind.isPresent()) {
            fields.refuseUnknown(); // without a kind nobody knows which keys belong
        }
        return member;
    }

    private static boolean isPlaned(ObjectNode node) {
        return FLATS.matcher(node.path("kind").asText("")).find();
    }

    private static String words() {
        return MemberKind.all().stream().map(MemberKind::word).sorted().collect(Collectors.joining(", "));
    }

    private static String title(ObjectNode node) {
        String name = node.path(MemberKey.NAME).asText("");
        String title = name.isBlank() ? node.path("kind").asText("") : name;
        return title.isBlank()
                ? "no kind"
                : QUOTES_ROUND.matcher(Values.excerpt(node.textNode(title))).replaceAll("");
    }

    /** All that the kind is given by; empty when something needed is missing or cannot be read, which has been told. */
    private static Optional<Sizes> sizes(MemberKind kind, Fields fields, Length stockSize) {
        Optional<Sizes> out = Optional.of(Sizes.NONE);
        for (MemberKey key : kind.keys()) {
            Optional<Sizes> so = out;
            // Every key is read even when one before it failed: all problems are told at once.
            out = switch (key.type()) {
                case LENGTH -> length(key, fields, stockSize, so);
                case POINTS -> points(key, fields).flatMap(points -> so.map(sizes -> sizes.with(points)));
            };
        }
        return out;
    }

    private static Optional<Sizes> length(MemberKey key, Fields fields, Length stockSize, Optional<Sizes> so) {
        Optional<Length> otherwise = key.otherwise().apply(stockSize);
        if (!key.isNeeded() && otherwise.isEmpty()) {
            Optional<Length> told = fields.has(key.name()) ? fields.length(key.name()) : Optional.empty();
            return so.map(
                    sizes -> told.map(size -> sizes.with(key.name(), size)).orElse(sizes));
        }
        Optional<Length> length =
                otherwise.isPresent() ? fields.lengthOr(key.name(), otherwise.get()) : fields.length(key.name());
        return length.flatMap(size -> so.map(sizes -> sizes.with(key.name(), size)));
    }

    private static Optional<List<FreeCurve.Point>> points(MemberKey key, Fields fields) {
        String mend = "give pairs like [[0, 20], [15, 24.5]]: place from the member's start, then diameter";
        Optional<List<JsonNode>> nodes = fields.list(key.name(), mend);
        if (nodes.isEmpty()) {
            return Optional.empty();
        }
        List<FreeCurve.Point> points = new ArrayList<>();
        for (int i = 0; i < nodes.get().size(); i++) {
            String place = "point " + (i + 1);
            JsonNode pair = nodes.get().get(i);
            if (!pair.isArray() || pair.size() != 2) {
                fields.reading().problem(fields.at(place), "is no pair, was " + Values.excerpt(pair), mend);
                continue;
            }
            Optional<Length> x = fields.lengthAt(place + " place", pair.get(0));
            Optional<Length> d = fields.lengthAt(place + " diameter", pair.get(1));
            x.ifPresent(at -> d.ifPresent(across -> points.add(new FreeCurve.Point(at, across))));
        }
        return points.size() == nodes.get().size() ? Optional.of(points) : Optional.empty();
    }
}
