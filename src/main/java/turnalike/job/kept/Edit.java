package turnalike.job.kept;

import java.util.List;

/**
 * What is changed at one stroke: all of it is kept or none, and one undo takes all of it back.
 *
 * @param what in the user's words, one line: {@code log piece 7}
 * @param changes one or more, each of another subject, else {@link IllegalArgumentException}
 */
public record Edit(String what, List<Change> changes) {
    public Edit {
        changes = List.copyOf(changes);
        if (changes.isEmpty()
                || changes.stream().map(Change::subject).distinct().count() != changes.size()) {
            throw new IllegalArgumentException("an edit changes one or more subjects, each once; was " + changes);
        }
        if (what.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException("what an edit does is said in one line, was '%s'".formatted(what));
        }
    }

    /**
     * {@return an edit of these changes}
     *
     * @param what in the user's words, one line
     * @param changes one or more, each of another subject, else {@link IllegalArgumentException}
     */
    public static Edit of(String what, Change... changes) {
        return new Edit(what, List.of(changes));
    }
}
