package turnalike.job.kept;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * A piece as JSON, without its label: {@code mass_g}, {@code length_mm}, {@code balance_mm}, {@code m1_mm}, {@code d1_mm}, …, as far as
 * measured; {@code turning_s}; {@code from_photo} with the columns read off a photograph; {@code extra} with further columns.
 */
final class PieceDocument {
    private static final String MM = "_mm";

    private PieceDocument() {}

    static ObjectNode tree(KeptPiece kept) {
        ObjectNode tree = KeptJson.object();
        kept.piece().measures().figures().forEach((column, figure) -> tree.put(key(column), KeptJson.digits(figure)));
        kept.turning().ifPresent(time -> tree.put("turning_s", KeptJson.digits(time.toMillis() / 1000.0)));
        if (!kept.fromPhoto().isEmpty()) {
            ObjectNode sources = tree.putObject("from_photo");
            kept.fromPhoto().forEach((column, source) -> {
                ObjectNode each = sources.putObject(key(column)).put("photo", source.photo());
                source.accuracy().ifPresent(off -> each.put("accuracy_mm", KeptJson.digits(off.mm())));
            });
        }
        if (!kept.piece().extra().isEmpty()) {
            ObjectNode extra = tree.putObject("extra");
            kept.piece().extra().forEach(extra::put);
        }
        return tree;
    }

    /** The inverse of {@link #tree}; {@link IllegalArgumentException} says what cannot be read. */
    static KeptPiece piece(String label, ObjectNode tree) {
        Measures measures = Measures.NONE;
        Optional<Duration> turning = Optional.empty();
        SortedMap<Column, FromPhoto> fromPhoto = new TreeMap<>();
        Map<String, String> extra = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> field : tree.properties()) {
            JsonNode value = field.getValue();
            switch (field.getKey()) {
                case "turning_s" ->
                    turning = Optional.of(Duration.ofMillis(Math.round(1000 * number("turning_s", value))));
                case "from_photo" ->
                    inside("from_photo", value)
                            .properties()
                            .forEach(each -> fromPhoto.put(column(each.getKey()), source(each.getValue())));
                case "extra" ->
                    inside("extra", value)
                            .properties()
                            .forEach(each ->
                                    extra.put(each.getKey(), each.getValue().asText()));
                default -> measures = with(measures, column(field.getKey()), number(field.getKey(), value));
            }
        }
        return new KeptPiece(new Piece(label, measures, extra), fromPhoto, turning);
    }

    private static Measures with(Measures measures, Column column, double figure) {
        return column.isMass() ? measures.with(Mass.ofGrams(figure)) : measures.with(column, Length.ofMm(figure));
    }

    private static String key(Column column) {
        return column.isMass() ? column.format() : column.format() + MM;
    }

    private static Column column(String key) {
        Optional<Column> column = key.endsWith(MM)
                ? Column.find(key.substring(0, key.length() - MM.length())).filter(each -> !each.isMass())
                : Optional.of(Column.MASS).filter(mass -> key.equals(mass.format()));
        return column.orElseThrow(() -> new IllegalArgumentException("has an unknown key '%s'".formatted(key)));
    }

    private static FromPhoto source(JsonNode node) {
        ObjectNode tree = inside("from_photo", node);
        return new FromPhoto(
                tree.path("photo").asText(),
                Optional.ofNullable(tree.get("accuracy_mm")).map(off -> Length.ofMm(number("accuracy_mm", off))));
    }

    private static ObjectNode inside(String key, JsonNode node) {
        if (node instanceof ObjectNode object) {
            return object;
        }
        throw new IllegalArgumentException(key + " is no object");
    }

    private static double number(String key, JsonNode node) {
        if (node.isNumber()) {
            return node.doubleValue();
        }
        throw new IllegalArgumentException(key + " is no number");
    }
}
