package turnalike.job.kept;

import java.util.Locale;
import java.util.regex.Pattern;
import turnalike.units.Parsed;

/**
 * The name a store knows a job by: three groups of four letters and digits, {@code 7k3m-2x9q-ht4d}, drawn so that two stores do not draw
 * the same one. It stays with the job when the job is carried away.
 *
 * @param text lower case; of any other form {@link IllegalArgumentException}
 */
public record JobId(String text) {
    /** The letters and digits that are not taken for one another when copied by hand: no i, l, o, u. */
    private static final String ALPHABET = "0123456789abcdefghjkmnpqrstvwxyz";

    private static final Pattern FORM = Pattern.compile("[%1$s]{4}-[%1$s]{4}-[%1$s]{4}".formatted(ALPHABET));

    public JobId {
        if (!FORM.matcher(text).matches()) {
            throw new IllegalArgumentException("'%s' is no job id".formatted(text));
        }
    }

    /**
     * Reads an id in either case.
     *
     * @param text as somebody typed it; space around it is read over
     * @return the id, or what is wrong with it
     */
    public static Parsed<JobId> parse(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        return FORM.matcher(plain).matches()
                ? Parsed.of(new JobId(plain))
                : Parsed.refused(
                        "'%s' is no job's id".formatted(plain.replaceAll("\\p{Cntrl}", "?")),
                        "give it as keep printed it, like 7k3m-2x9q-ht4d");
    }

    /**
     * {@return the id of twelve draws; each is taken modulo 32}
     *
     * @param draws twelve or more numbers, of which the first twelve count
     */
    public static JobId of(int[] draws) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 12; i++) {
            text.append(i > 0 && i % 4 == 0 ? "-" : "").append(ALPHABET.charAt(Math.floorMod(draws[i], 32)));
        }
        return new JobId(text.toString());
    }

    @Override
    public String toString() {
        return text;
    }
}
