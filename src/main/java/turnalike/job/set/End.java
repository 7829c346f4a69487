package turnalike.job.set;

import java.util.List;
import turnalike.job.fields.KeyType.Word;

/** One of the two ends of a run or a row. */
public enum End {
    /** The one that every place is measured from. */
    START,
    /** The far one. */
    END;

    static final Word WORDS = new Word(List.of("start", "end"));

    static End of(String word) {
        return word.equals(WORDS.words().get(0)) ? START : END;
    }
}
