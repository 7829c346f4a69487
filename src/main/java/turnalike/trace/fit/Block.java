package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;
import turnalike.trace.Original;
import turnalike.trace.Profile;

/**
 * A stretch between two given joints, round or told to be square.
 *
 * @param first its first station
 * @param last its last
 */
record Block(double fromMm, double toMm, int first, int last, boolean isSquare) {
    /** The blocks of an original, in order; those without any station are given to the block before them, or after. */
    static List<Block> of(Data data, Original original) {
        double end = original.profile().length().mm();
        List<Block> out = new ArrayList<>();
        double at = 0;
        int next = 0;
        for (Profile.Stretch square : original.squares()) {
            int first = next;
            while (first < data.size() && data.x[first] < square.from().mm()) {
                first++;
            }
            // At a shoulder two stations share a place; the one before it is the neighbour's.
            if (first + 1 < data.size() && first > next - 1 && first > 0 && data.x[first] == data.x[first + 1]) {
                first++;
            }
            int last = first;
            while (last + 1 < data.size() && data.x[last + 1] <= square.to().mm()) {
                last++;
            }
            if (last + 1 < data.size() && last > first && data.x[last] == data.x[last - 1]) {
                last--;
            }
            if (first > next && square.from().mm() > at) {
                out.add(new Block(at, square.from().mm(), next, first - 1, false));
            }
            double from =
                    first > next && square.from().mm() > at ? square.from().mm() : at;
            out.add(new Block(from, square.to().mm(), first, last, true));
            at = square.to().mm();
            next = last + 1;
        }
        if (next < data.size() && at < end) {
            out.add(new Block(at, end, next, data.size() - 1, false));
        } else if (at < end) {
            Block lastOne = out.remove(out.size() - 1);
            out.add(new Block(lastOne.fromMm(), end, lastOne.first(), lastOne.last(), lastOne.isSquare()));
        }
        return out;
    }

    /** The square of mean size. */
    Part square(Data data) {
        double sum = 0;
        double weights = 0;
        for (int i = first; i <= last; i++) {
            sum += data.weight[i] * data.r[i];
            weights += data.weight[i];
        }
        return new Part(Form.LEVEL, fromMm, toMm, List.of(sum / weights), true, List.of(), false);
    }
}
