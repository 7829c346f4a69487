package turnalike.web.job;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import turnalike.job.JobSettings;
import turnalike.job.Plan;
import turnalike.language.Language;

/**
 * Parts of pages that were written lately, to be sent again as long as they would come out to the letter the same: most of what a job's
 * page shows is another only when the plan is. May be used by several threads; two that want the same part at once may both write it.
 */
final class FinishedParts {
    /** Some forty pages that have nothing in common. */
    private static final int MOST_BYTES = 6_000_000;

    /** What a field takes that is kept to compare with, about. */
    private static final int FIELD_BYTES = 250;

    private final int mostBytes;
    private final Map<Shown, Finished> recent = new LinkedHashMap<>(64, 0.75f, true);
    private long bytes;

    FinishedParts() {
        this(MOST_BYTES);
    }

    /** @param mostBytes that are kept in all; those used longest ago go first */
    FinishedParts(int mostBytes) {
        this.mostBytes = mostBytes;
    }

    /**
     * All that the words of a part hang on: two that are equal are written alike.
     *
     * @param id which part it is
     * @param whole whether its forms say the version, the member and the token
     * @param language it is written in
     * @param plan what follows from the job
     * @param also what it shows beside the plan: what is looked at, fields as they were typed, the job's address
     */
    record Shown(String id, boolean whole, Language language, Worked plan, List<Object> also) {
        Shown {
            also = List.copyOf(also);
        }

        /** About, beside what it shares with others. */
        private int bytes() {
            return also.stream()
                    .mapToInt(each -> each instanceof List<?> fields ? fields.size() * FIELD_BYTES : 0)
                    .sum();
        }
    }

    /**
     * What was worked out together. Everything in a plan but its title was, when its settings are one and the same object: each working out
     * makes new ones, so comparing them says it all and need not go through figure by figure.
     */
    record Worked(JobSettings settings) {
        static Worked of(Plan plan) {
            return new Worked(plan.settings());
        }

        @Override
        @SuppressWarnings("ReferenceEquality") // that is the question
        public boolean equals(Object other) {
            return other instanceof Worked that && that.settings == settings;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(settings);
        }
    }

    /** A part as it is sent: in bytes, so that they need not be made of its letters again for each page. */
    static final class Finished {
        /** Before, between and after the places that each form fills in by itself. */
        private final List<byte[]> between;

        private final String digest;

        private Finished(List<byte[]> between, String digest) {
            this.between = List.copyOf(between);
            this.digest = digest;
        }

        /** @param place what stands where a form fills something in */
        static Finished of(String text, String place) {
            List<byte[]> between = new ArrayList<>();
            int from = 0;
            for (int at = text.indexOf(place); at >= 0; at = text.indexOf(place, from)) {
                between.add(text.substring(from, at).getBytes(StandardCharsets.UTF_8));
                from = at + place.length();
            }
            between.add(text.substring(from).getBytes(StandardCharsets.UTF_8));
            return new Finished(between, digest(text));
        }

        void onto(ByteArrayOutputStream out, byte[] filling) {
            for (int i = 0; i < between.size(); i++) {
                if (i > 0) {
                    out.writeBytes(filling);
                }
                out.writeBytes(between.get(i));
            }
        }

        /** All of it, with nothing filled in. */
        String text() {
            ByteArrayOutputStream out = new ByteArrayOutputStream(bytes());
            onto(out, new byte[0]);
            return out.toString(StandardCharsets.UTF_8);
        }

        String digest() {
            return digest;
        }

        private int bytes() {
            return between.stream().mapToInt(each -> each.length).sum();
        }

        /** A sum of 64 bits: two states of one part have the same by chance once in 10¹⁹ times. */
        private static String digest(String text) {
            long sum = text.length();
            for (int i = 0; i < text.length(); i++) {
                sum = (sum + text.charAt(i)) * 0x9E3779B97F4A7C15L;
                sum ^= sum >>> 29;
            }
            return Long.toHexString(sum);
        }
    }

    /** The part that shows this; written when it is not kept. */
    Finished get(Shown shown, Supplier<Finished> writing) {
        synchronized (recent) {
            Finished had = recent.get(shown);
            if (had != null) {
                return had;
            }
        }
        Finished made = writing.get();
        keep(shown, made);
        return made;
    }

    private void keep(Shown shown, Finished made) {
        synchronized (recent) {
            Finished other = recent.put(shown, made);
            bytes += made.bytes() + (other == null ? shown.bytes() : -other.bytes());
            var eldest = recent.entrySet().iterator();
            while (bytes > mostBytes && eldest.hasNext()) {
                Map.Entry<Shown, Finished> each = eldest.next();
                bytes -= each.getKey().bytes() + each.getValue().bytes();
                eldest.remove();
            }
        }
    }

    /** How many bytes are kept. */
    long bytes() {
        synchronized (recent) {
            return bytes;
        }
    }
}
