package turnalike.web.copy;

import turnalike.units.Problem;
import turnalike.units.SentenceCase;

/**
 * Why nothing came of an original, read at arm's length: what is wrong, then by itself what to do.
 *
 * @param wrong a sentence
 * @param mend a sentence
 */
public record WrongAndMend(String wrong, String mend) {
    static WrongAndMend of(Problem problem) {
        return new WrongAndMend(
                SentenceCase.sentence(problem.where() + ": " + problem.what()), SentenceCase.sentence(problem.mend()));
    }
}
