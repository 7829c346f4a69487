package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import turnalike.pieces.blanks.WeighedBlank;
import turnalike.stock.LossRecord;
import turnalike.units.Mass;

/**
 * What a job's own log says of its blanks. A blank and the piece turned of it bear the same label.
 *
 * @param weighed what each logged piece weighs, by its label
 * @param spoiled the labels of pieces that were spoiled
 * @param slips the labels of pieces that were taken out of the log without being spoiled: no loss
 */
public record BlankLog(Map<String, Mass> weighed, Set<String> spoiled, Set<String> slips) {
    /** No log. */
    public static final BlankLog NONE = new BlankLog(Map.of(), Set.of(), Set.of());

    public BlankLog {
        weighed = new LinkedHashMap<>(weighed);
        spoiled = new TreeSet<>(spoiled);
        slips = new TreeSet<>(slips);
    }

    /**
     * {@return the blanks with what the log says of them: its weight for a piece that was not given another, and which came to nothing}
     *
     * @param blanks as they were typed
     */
    public List<WeighedBlank> onto(List<WeighedBlank> blanks) {
        List<WeighedBlank> out = new ArrayList<>();
        for (WeighedBlank each : blanks) {
            Optional<Mass> logged = Optional.ofNullable(weighed.get(each.label()))
                    .filter(mass -> mass.grams() <= each.mass().grams());
            boolean lost = each.lost() || spoiled.contains(each.label());
            out.add(new WeighedBlank(
                    each.label(),
                    each.mass(),
                    each.length(),
                    each.size(),
                    each.moisture(),
                    each.finished().or(() -> lost ? Optional.empty() : logged),
                    lost));
        }
        return out;
    }

    /** {@return the labels of blanks whose logged piece weighs more than they do, in order: one of the two is wrong} */
    List<String> heavier(List<WeighedBlank> blanks) {
        return blanks.stream()
                .filter(each -> each.finished().isEmpty()
                        && Optional.ofNullable(weighed.get(each.label()))
                                .filter(mass -> mass.grams() > each.mass().grams())
                                .isPresent())
                .map(WeighedBlank::label)
                .toList();
    }

    /**
     * {@return how many came to nothing and how many came out good, each label counted once: of the blanks told and of the log}
     *
     * @param told the share of blanks expected to be lost
     * @param blanks as they were typed
     */
    public LossRecord losses(double told, List<WeighedBlank> blanks) {
        Set<String> lost = new TreeSet<>(spoiled);
        Set<String> good = new TreeSet<>(weighed.keySet());
        for (WeighedBlank each : blanks) {
            if (each.lost()) {
                lost.add(each.label());
            } else if (each.finished().isPresent()) {
                good.add(each.label());
            }
        }
        good.removeAll(lost);
        return new LossRecord(told, lost.size(), good.size());
    }
}
