package turnalike.settings;

import java.util.NavigableSet;
import java.util.Random;
import java.util.TreeSet;

/** Invented mark patterns of the kinds a shop meets; places in mm, both ends included. */
final class PatternFamilies {
    private static final double SIXTEENTH_MM = 25.4 / 16;
    private static final int[] MEMBER_SIXTEENTHS = {2, 3, 4, 4, 6, 6, 8, 8, 10, 12, 12, 16, 20, 24, 32};
    private static final double[] MEMBER_MM = {3, 5, 6, 6, 8, 8, 10, 12, 12, 15, 18, 20, 25, 30, 40};

    private PatternFamilies() {}

    /** A family of patterns with a name a report can print. */
    enum Family {
        INCH_MEMBERS,
        /** The same to the middle of the piece, and back again: most turnings repeat their details. */
        MIRRORED_INCH_MEMBERS,
        MM_MEMBERS,
        INCH_GRID,
        MM_TENTHS
    }

    static double[] marks(Family family, int count, Random random) {
        return switch (family) {
            case INCH_MEMBERS -> {
                NavigableSet<Integer> places =
                        members(count, random, MEMBER_SIXTEENTHS.length, i -> MEMBER_SIXTEENTHS[i] * 2);
                yield scaled(places, SIXTEENTH_MM / 2);
            }
            case MIRRORED_INCH_MEMBERS -> {
                NavigableSet<Integer> half =
                        members(count / 2 + 1, random, MEMBER_SIXTEENTHS.length, i -> MEMBER_SIXTEENTHS[i] * 2);
                NavigableSet<Integer> places = new TreeSet<>(half);
                half.forEach(place -> places.add(2 * half.last() - place));
                yield scaled(places, SIXTEENTH_MM / 2);
            }
            case MM_MEMBERS -> {
                NavigableSet<Integer> places =
                        members(count, random, MEMBER_MM.length, i -> (int) Math.round(MEMBER_MM[i] * 2));
                yield scaled(places, 0.5);
            }
            case INCH_GRID -> scaled(scattered(count, 16 * 30, random), SIXTEENTH_MM);
            case MM_TENTHS -> scaled(scattered(count, 7000, random), 0.1);
        };
    }

    /** Members laid end to end; every second bead or cove also has a mark at its middle. */
    private static NavigableSet<Integer> members(
            int count, Random random, int kinds, java.util.function.IntUnaryOperator size) {
        NavigableSet<Integer> places = new TreeSet<>();
        places.add(0);
        int at = 0;
        while (places.size() < count) {
            int length = size.applyAsInt(random.nextInt(kinds));
            if (random.nextInt(3) == 0 && places.size() + 1 < count) {
                places.add(at + length / 2);
            }
            at += length;
            places.add(at);
        }
        return places;
    }

    /**
     * An invented turning of so many members on a sixteenth of an inch, five in ten of them beads or coves of a quarter to an inch and a
     * quarter with a mark at their crest, three fillets and two tapers; by choice the second half mirrors the first.
     */
    static double[] turning(int members, boolean mirrored, Random random) {
        NavigableSet<Integer> places = new TreeSet<>();
        places.add(0);
        int at = 0;
        for (int member = 0; member < (mirrored ? members / 2 : members); member++) {
            int kind = random.nextInt(10);
            int half = kind < 5 ? 4 + random.nextInt(17) : kind < 8 ? 2 + random.nextInt(3) : 24 + random.nextInt(57);
            if (kind < 5) {
                places.add(at + half);
            }
            at += 2 * half;
            places.add(at);
        }
        if (mirrored) {
            NavigableSet<Integer> first = new TreeSet<>(places);
            first.forEach(place -> places.add(2 * first.last() - place));
        }
        return scaled(places, SIXTEENTH_MM / 2);
    }

    private static NavigableSet<Integer> scattered(int count, int span, Random random) {
        NavigableSet<Integer> places = new TreeSet<>();
        places.add(0);
        places.add(span);
        while (places.size() < count) {
            places.add(1 + random.nextInt(span - 1));
        }
        return places;
    }

    private static double[] scaled(NavigableSet<Integer> places, double mmPerUnit) {
        return places.stream().mapToDouble(place -> place * mmPerUnit).toArray();
    }
}
