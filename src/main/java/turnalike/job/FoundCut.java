package turnalike.job;

import java.util.List;
import turnalike.effort.Ending;
import turnalike.stock.boards.CutRecord;

/**
 * How a job's boards are cut, as it was found last.
 *
 * @param with ids of the other kept jobs whose blanks are sawn along, in order
 * @param ended what ended the search
 * @param cutting what was found
 */
public record FoundCut(List<String> with, Ending ended, CutRecord cutting) {
    public FoundCut {
        with = List.copyOf(with);
    }
}
