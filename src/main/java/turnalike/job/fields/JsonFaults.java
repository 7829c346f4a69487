package turnalike.job.fields;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What keeps a text from being JSON, in words for who typed it: the library's own name its classes, its switches and codes of characters. */
final class JsonFaults {
    private static final int LONGEST = 60;

    /**
     * One of the library's messages.
     *
     * @param pattern how it begins
     * @param words what is said instead
     */
    private record Wording(Pattern pattern, Function<Matcher, String> words) {
        static Wording of(String pattern, String words) {
            return new Wording(Pattern.compile(pattern), found -> words);
        }

        /** With the message's first group in the place of the words' %s. */
        static Wording with(String pattern, String words) {
            return new Wording(Pattern.compile(pattern), found -> words.formatted(plain(found.group(1))));
        }
    }

    /** The more particular ones first. */
    private static final List<Wording> WORDINGS = List.of(
            Wording.of("Trailing token|Unexpected close marker.*no open", "something follows the closing brace"),
            Wording.with("Non-standard token ('[^']*')", "%s is no number"),
            Wording.with("Duplicate field '(.*)'", "the key '%s' stands twice"),
            Wording.with(
                    "Unexpected end-of-input: expected close marker for Object.* line: (\\d+)",
                    "it ends before the { of line %s is closed"),
            Wording.with(
                    "Unexpected end-of-input: expected close marker for Array.* line: (\\d+)",
                    "it ends before the [ of line %s is closed"),
            Wording.of("Unexpected end-of-input.*(closing quote|VALUE_STRING|field name)", "it ends inside a text"),
            Wording.of("Unexpected end-of-input", "it ends too early"),
            Wording.with("Unexpected close marker '(.)': expected '}'", "a %s stands where a } should"),
            Wording.with("Unexpected close marker '(.)': expected ']'", "a %s stands where a ] should"),
            Wording.of("Unexpected character .* in numeric value", "a number is not complete"),
            Wording.with(
                    "Unexpected character \\((.*) \\(code.*start field name",
                    "a key in \"\" should stand where %s does"),
            Wording.with("Unexpected character \\((.*) \\(code.*expecting a colon", "a : should stand where %s does"),
            Wording.with("Unexpected character \\((.*) \\(code.*expecting comma", "a comma should stand where %s does"),
            Wording.with("Unexpected character \\((.*) \\(code.*valid value", "a value should stand where %s does"),
            Wording.with("Unexpected character \\((.*) \\(code", "%s has no place there"),
            Wording.with("Unrecognized token '(.*)': was", "'%s' stands without \"\""),
            Wording.of("Illegal unquoted character", "a text in \"\" holds a line's end or a tab, in JSON \\n or \\t"),
            Wording.with(
                    "Illegal character \\(\\(CTRL-CHAR, code (\\d+)", "the control character %s has no place there"),
            Wording.of("Unrecognized character escape", "after a \\ in a text only \" \\ / b f n r t or u may stand"),
            Wording.of("Invalid numeric value: Leading zeroes", "a number begins with a 0 too many"),
            Wording.of(
                    "(Invalid numeric value|Malformed numeric value|Decimal point|Exponent)",
                    "a number is not complete"),
            Wording.of("Document nesting depth", "lists and objects stand too deep in one another"),
            Wording.of("(String value|Name|Number value) length", "a text, key or number in it is too long"),
            Wording.of("Invalid UTF|Unexpected surrogate|Incomplete surrogate", "a letter in it is broken"));

    private JsonFaults() {}

    /**
     * {@return what is wrong, without a full stop; what the library says in its first line where its message is not known}
     *
     * @param fault told by the parser
     */
    static String words(JsonProcessingException fault) {
        String line = fault.getOriginalMessage().lines().findFirst().orElse("");
        for (Wording each : WORDINGS) {
            Matcher found = each.pattern.matcher(line);
            if (found.lookingAt()) {
                return each.words.apply(found);
            }
        }
        return plain(line);
    }

    private static String plain(String text) {
        String line = text.replaceAll("[\\p{Cntrl}]", "?");
        return line.length() > LONGEST ? line.substring(0, LONGEST) + "…" : line;
    }
}
