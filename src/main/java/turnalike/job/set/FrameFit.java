package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.turning.EndSlopes;
import turnalike.units.Length;
import turnalike.units.MassUnit;
import turnalike.units.SentenceCase;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/** How the pattern stands in its frame: what touches, what is left between mortises, where each piece goes. */
public sealed interface FrameFit permits WheelFit, RowFit, LegsFit {
    /** How a line of {@link #facts} begins that goes on with the list of the one before. */
    String GOES_ON = "             ";

    /** {@return what cannot be built or is thin, what cannot be built first} */
    List<Misfit> misfits();

    /** {@return how its figures were found} */
    List<Working> workings();

    /**
     * {@return the figures in words, a line each, as on a screen: what a line is of stands in its first eleven letters, empty where it is still
     * the same}
     *
     * @param units in which lengths are told, the other beside
     * @param masses in which masses are told
     */
    List<String> facts(UnitSystem units, MassUnit masses);

    /**
     * {@return the same figures as sentences, for paper}
     *
     * @param units in which lengths are told, the other beside
     * @param masses in which masses are told
     */
    default List<String> sentences(UnitSystem units, MassUnit masses) {
        List<String> out = new ArrayList<>();
        String subject = "";
        for (String line : facts(units, masses)) {
            if (line.startsWith(GOES_ON)) {
                int last = out.size() - 1;
                String before = out.get(last);
                out.set(last, "%s, %s.".formatted(before.substring(0, before.length() - 1), line.strip()));
                continue;
            }
            String word = line.substring(0, Math.min(11, line.length())).strip();
            subject = word.isEmpty() ? subject : word;
            out.add("%s: %s."
                    .formatted(SentenceCase.capital(subject), line.substring(11).strip()));
        }
        return out;
    }

    /** {@return where on a piece, from its start end, it runs into its neighbour; empty where it touches none} */
    Optional<Length> touches();

    /** {@return which ends of a piece are cut on a slope once it is turned} */
    default EndSlopes slopes() {
        return EndSlopes.NONE;
    }

    /** {@return whether nothing in it forbids building it} */
    default boolean buildable() {
        return misfits().stream().noneMatch(Misfit::forbids);
    }

    /**
     * {@return what the case for this kind makes of it}
     *
     * @param <R> what becomes of it
     * @param cases one answer for each kind
     */
    <R> R match(Cases<R> cases);

    /**
     * What an outer layer makes of each kind.
     *
     * @param <R> what it makes
     */
    interface Cases<R> {
        /**
         * {@return what a wheel's fit becomes}
         *
         * @param fit the figures
         */
        R wheel(WheelFit fit);

        /**
         * {@return what a row's fit becomes}
         *
         * @param fit the figures
         */
        R row(RowFit fit);

        /**
         * {@return what the legs' fit becomes}
         *
         * @param fit the figures
         */
        R legs(LegsFit fit);
    }
}
