package turnalike.stock.boards;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import turnalike.units.Length;

/**
 * How the blanks are cut out of the boards.
 *
 * @param order what was asked
 * @param boards those that are cut, in the order of the list; none that is left whole
 * @param leftOver what is left of them, the longest first
 * @param missing blanks for which there is no wood, in the order they were asked for
 * @param cost of the boards that are cut, as far as prices are known
 * @param bound no plan for as many blanks costs less; where nothing has a price, none takes fewer boards
 * @param proven whether no plan cuts more blanks, and none as many for less
 * @param longest how long what is left over can be at the most, as far as proven, within a micrometre
 * @param longestProven whether no plan for the same cost leaves a longer piece
 */
public record CuttingPlan(
        CuttingOrder order,
        List<CutBoard> boards,
        List<LeftOver> leftOver,
        List<Missing> missing,
        BigDecimal cost,
        BigDecimal bound,
        boolean proven,
        Length longest,
        boolean longestProven) {
    public CuttingPlan {
        boards = List.copyOf(boards);
        leftOver = List.copyOf(leftOver);
        missing = List.copyOf(missing);
    }

    /**
     * A board that is cut.
     *
     * @param board which
     * @param label its own name, where several are alike
     * @param rips from one edge to the other
     */
    public record CutBoard(Board board, String label, List<Rip> rips) {
        public CutBoard {
            rips = List.copyOf(rips);
        }

        /** {@return all its strips, rip by rip} */
        public List<Strip> strips() {
            return rips.stream().flatMap(rip -> rip.strips().stream()).toList();
        }
    }

    /**
     * What is ripped off the board in one width, then split into strips over one another.
     *
     * @param from its nearer side, from the edge of the board as it is
     * @param size its width, and what each strip is thick
     * @param strips at least one, the first at the board's upper face
     */
    public record Rip(Length from, Length size, List<Strip> strips) {
        public Rip {
            strips = List.copyOf(strips);
        }
    }

    /**
     * One strip; it may hold nothing.
     *
     * @param size side of its square
     * @param blanks from one end of the board to the other
     */
    public record Strip(Length size, List<CutBlank> blanks) {
        public Strip {
            blanks = List.copyOf(blanks);
        }
    }

    /**
     * One blank in its strip.
     *
     * @param of which of the wanted ones
     * @param from its nearer end, from the untrimmed end of the board
     */
    public record CutBlank(Wanted of, Length from) {}

    /**
     * A piece that is left of a board that was cut, without fault, wide enough for the narrowest strip that was wanted.
     *
     * @param label of the board
     * @param from its nearer end, from the untrimmed end of the board
     * @param length along the board
     * @param across its nearer side, from the edge of the board
     * @param width across the board
     * @param layer which strip of its rip it is of, from 0 at the upper face; 0 where it is not ripped
     */
    public record LeftOver(String label, Length from, Length length, Length across, Length width, int layer) {}

    /**
     * Blanks for which there is no wood.
     *
     * @param of which of the wanted ones
     * @param count how many
     * @param nearest where no board can give even one: the board that comes nearest and what it lacks
     */
    public record Missing(Wanted of, int count, Optional<Nearest> nearest) {}

    /** What a board lacks. */
    public enum Lack {
        /** It is another wood. */
        SPECIES("another wood"),
        /** It is too thin. */
        THICKNESS("too thin"),
        /** It is too narrow once its edges are straight. */
        WIDTH("too narrow"),
        /** Its longest stretch between ends and faults is too short. */
        LENGTH("too short");

        private final String words;

        Lack(String words) {
            this.words = words;
        }

        /** {@return the same in words: {@code too thin}} */
        public String words() {
            return words;
        }
    }

    /**
     * The board that comes nearest to giving a blank.
     *
     * @param board which
     * @param lack what is wrong with it first of all
     * @param by how much it lacks; zero for another wood
     */
    public record Nearest(Board board, Lack lack, Length by) {}

    /** The plan of these boards, with what is left over and missing. */
    static CuttingPlan of(
            CuttingOrder order,
            List<CutBoard> boards,
            BigDecimal bound,
            boolean proven,
            Length longest,
            boolean longestProven) {
        List<LeftOver> leftOver = LeftOvers.of(order, boards).stream()
                .sorted(Comparator.comparing(LeftOver::length).reversed())
                .toList();
        BigDecimal cost = boards.stream()
                .map(each -> each.board().price().orElse(BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return new CuttingPlan(
                order, boards, leftOver, MissingBlanks.of(order, boards), cost, bound, proven, longest, longestProven);
    }

    /** {@return how many boards are cut} */
    public int used() {
        return boards.size();
    }

    /** {@return the volume of the blanks by the volume of the boards that are cut, 0 to 1; 0 where none is} */
    public double shareUsed() {
        double wood = boards.stream()
                .mapToDouble(each -> each.board().thickness().mm()
                        * each.board().width().mm()
                        * each.board().length().mm())
                .sum();
        double blanks = boards.stream()
                .flatMap(each -> each.strips().stream())
                .flatMap(strip -> strip.blanks().stream())
                .mapToDouble(each -> each.of().size().mm()
                        * each.of().size().mm()
                        * each.of().length().mm())
                .sum();
        return wood > 0 ? blanks / wood : 0;
    }

    /** {@return what of those left over is worth keeping: as long as the shortest blank that was wanted} */
    public Length keep() {
        return order.wanted().stream()
                .map(Wanted::length)
                .min(Length::compareTo)
                .orElse(Length.ZERO);
    }
}
