package turnalike.job.kept;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.NumberOutput;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;

/**
 * JSON trees whose numbers keep every digit they were written with, so that what is carried away and brought back is the same to the byte,
 * under every Java: the digits of a double come from one algorithm of Jackson's, not from {@code Double.toString}, which changed in 19.
 */
final class KeptJson {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .disable(JsonParser.Feature.INCLUDE_SOURCE_IN_LOCATION)
            .disable(SerializationFeature.FLUSH_AFTER_WRITE_VALUE)
            .build();

    private static final ObjectWriter PAGE = MAPPER.writer(new DefaultPrettyPrinter()
            .withObjectIndenter(new DefaultIndenter("  ", "\n"))
            .withArrayIndenter(new DefaultIndenter("  ", "\n")));

    private KeptJson() {}

    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    /** The object in the text; {@link IllegalArgumentException} when there is none. */
    static ObjectNode object(String text) {
        try {
            if (MAPPER.readTree(text.startsWith("\ufeff") ? text.substring(1) : text) instanceof ObjectNode object) {
                return object;
            }
        } catch (JsonProcessingException notJson) {
            throw new IllegalArgumentException("is not JSON", notJson);
        }
        throw new IllegalArgumentException("is no JSON object");
    }

    /** The tree on one line. */
    static String line(JsonNode node) {
        return print(MAPPER.writer(), node);
    }

    /** The tree spread over lines for people to read, ended by a line end. */
    static String page(JsonNode node) {
        return print(PAGE, node) + "\n";
    }

    /** Writes what is handed to it as {@link #page} would, to there; closing it leaves that open. */
    static JsonGenerator pageTo(Writer out) {
        try {
            return PAGE.createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible); // nothing is written yet
        }
    }

    private static String print(ObjectWriter writer, JsonNode node) {
        try {
            return writer.writeValueAsString(node);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a tree could not be printed", impossible);
        }
    }

    /** The fewest digits that are read back as the same double, without an exponent as far as twenty digits go. */
    static BigDecimal digits(double figure) {
        BigDecimal exact = new BigDecimal(NumberOutput.toString(figure, true)).stripTrailingZeros();
        return exact.scale() < 0 && exact.precision() - exact.scale() <= 20 ? exact.setScale(0) : exact;
    }
}
