package turnalike.web.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.job.edit.JobEdit;
import turnalike.units.Problem;

/**
 * An edit that is asked for.
 *
 * @param edit of all that was typed
 * @param alone of the field that was left, for when all of it is refused
 * @param form which form it came from
 * @param typed the fields as they were sent
 * @param field the one that was left
 * @param selected the member that is selected after it
 */
record AskedEdit(
        JobEdit edit,
        Optional<JobEdit> alone,
        String form,
        Map<String, String> typed,
        Optional<String> field,
        int selected) {
    RefusedEdit kept() {
        return field.map(name -> RefusedEdit.keeping(form, name)).orElse(RefusedEdit.NONE);
    }

    RefusedEdit refused(List<Problem> problems) {
        return new RefusedEdit(form, typed, problems);
    }
}
