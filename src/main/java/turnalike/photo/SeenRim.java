package turnalike.photo;

import java.util.function.DoubleUnaryOperator;

/**
 * How the near half of a flat end's rim is seen: at each Y the X farthest out, over the place of the face.
 */
sealed interface SeenRim {
    /**
     * The rim of such an end.
     *
     * @param radius of the piece right behind the rim, in units of the distance
     * @param edge what was done to it
     * @param place how far out the face stands
     */
    static SeenRim of(double radius, EndEdge edge, double place) {
        if (edge.round() > 0) {
            return Rounded.of(radius, edge, place);
        }
        if (edge.eased() > 0) {
            return Eased.of(radius, edge, place);
        }
        return edge.chamfer() > 0 ? Chamfered.of(radius, edge.face(), place) : new Sharp(radius);
    }

    /** X over the place, at that Y. */
    double at(double y);

    /** At what depth the near half of a circle is seen where Y² is so much: the smaller root of (1 + G)z² − 2z + 1 − r² = 0. */
    private static double nearDepth(double squared, double radius) {
        double under = 1 - (1 + squared) * (1 - radius * radius);
        return (1 - Math.sqrt(Math.max(0, under))) / (1 + squared);
    }

    private static double seen(double y, double radius) {
        return 1 / nearDepth(y * y, radius);
    }

    /**
     * A circle.
     *
     * @param radius its own
     */
    record Sharp(double radius) implements SeenRim {
        @Override
        public double at(double y) {
            return seen(y, radius);
        }
    }

    /** The face's near half, the near half of the rim behind the chamfer, and what is straight between the two. */
    record Chamfered(double face, double whole, double share, double from, double to, double level, double slope)
            implements SeenRim {
        /** How many places of either rim are tried for the straight line between them. */
        private static final int BRIDGE = 24;

        static Chamfered of(double radius, double face, double place) {
            double share = 1 - radius * (1 - face) / place;
            return new Chamfered(radius * face, radius, share, Double.POSITIVE_INFINITY, 0, 0, 0).bridged();
        }

        /** The straight line that lies on both: of all through a point of either, the one farthest out where the two cross. */
        private Chamfered bridged() {
            double crossing = 0;
            for (double step = face / 2; step > 1e-3 * face; step /= 2) {
                boolean before = seen(crossing + step, face) > share * seen(crossing + step, whole);
                crossing += before ? step : 0;
            }
            double best = 0;
            Chamfered found = this;
            for (int i = 0; i <= BRIDGE; i++) {
                double one = crossing * i / BRIDGE;
                double x = seen(one, face);
                for (int k = 1; k <= BRIDGE; k++) {
                    double other = crossing + (whole - crossing) * k / BRIDGE;
                    double rise = (share * seen(other, whole) - x) / (other - one);
                    double out = x + rise * (crossing - one);
                    if (out > best) {
                        best = out;
                        found = new Chamfered(face, whole, share, one, other, x, rise);
                    }
                }
            }
            return found;
        }

        @Override
        public double at(double y) {
            if (Math.abs(y) <= from) {
                return seen(y, face);
            }
            return Math.abs(y) <= to ? level + slope * (Math.abs(y) - from) : share * seen(y, whole);
        }
    }

    /**
     * A table by Y, for they are asked often. Its places stand the closer together the nearer to the side, where the rim turns into the flank.
     *
     * @param x at each place of the table: evenly by how far the root of what Y lacks of the most has fallen, as a share
     * @param most the largest Y
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Table(double[] x, double most) implements SeenRim {
        /** So much of the largest Y is reached, where no ray would touch anything of a rim that is rounded off. */
        private static final double REACHED = 0.9999;

        static Table of(double radius, int steps, DoubleUnaryOperator farthest) {
            double most = REACHED * radius / Math.sqrt(1 - radius * radius);
            double[] x = new double[steps + 1];
            for (int k = 0; k <= steps; k++) {
                double share = 1 - (double) k / steps;
                x[k] = farthest.applyAsDouble(most * (1 - share * share));
            }
            return new Table(x, most);
        }

        @Override
        public double at(double y) {
            int steps = x.length - 1;
            double at = steps * (1 - Math.sqrt(Math.max(0, 1 - Math.abs(y) / most)));
            int k = Math.min(steps - 1, (int) at);
            return x[k] + (at - k) * (x[k + 1] - x[k]);
        }
    }

    /**
     * A chamfer the corners of which are taken off: between the straight line from the face to the flank and the quarter of a circle, as circles
     * round the axis, the outermost of which is seen.
     */
    final class Eased {
        private static final int STEPS = 48;

        private static final int CIRCLES = 24;

        private Eased() {}

        static SeenRim of(double radius, EndEdge edge, double place) {
            return Table.of(radius, STEPS, y -> farthest(radius, edge, place, y));
        }

        private static double farthest(double radius, EndEdge edge, double place, double y) {
            double wide = radius * edge.chamfer();
            double most = 0;
            for (int i = 0; i <= CIRCLES; i++) {
                double share = (double) i / CIRCLES;
                double circle = radius - wide + wide * out(share, edge.eased());
                if (y <= circle / Math.sqrt(1 - circle * circle)) {
                    most = Math.max(most, (1 - wide * deep(share, edge.eased()) / place) * seen(y, circle));
                }
            }
            return most;
        }

        /** Where the face stands whose outermost circle is seen at so much X on the axis. */
        static double place(double apex, double radius, EndEdge edge) {
            double wide = radius * edge.chamfer();
            double place = Double.POSITIVE_INFINITY;
            for (int i = 0; i <= CIRCLES; i++) {
                double share = (double) i / CIRCLES;
                double circle = radius - wide + wide * out(share, edge.eased());
                place = Math.min(place, apex * (1 - circle) + wide * deep(share, edge.eased()));
            }
            return place;
        }

        /** How far out from the face's rim to the flank, and how deep behind the face, as shares of the width. */
        private static double out(double share, double eased) {
            return (1 - eased) * share + eased * Math.sin(Math.PI / 2 * share);
        }

        private static double deep(double share, double eased) {
            return (1 - eased) * share + eased * (1 - Math.cos(Math.PI / 2 * share));
        }
    }

    /** The outermost of all balls that fill the rounding, each of which has its middle on one circle. */
    final class Rounded {
        private static final int STEPS = 64;

        /** How finely the ball is looked for, which lies the farther round the rim the farther out from the axis. */
        private static final int HALVINGS = 26;

        private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

        private Rounded() {}

        static SeenRim of(double radius, EndEdge edge, double place) {
            double ball = radius * edge.round();
            double ring = radius - ball;
            return Table.of(radius, STEPS, y -> farthest(place - ball, ring, ball, y) / place);
        }

        /** Of all balls the one farthest out: by the golden section, as farther round they come nearer and then fall back. */
        private static double farthest(double middle, double ring, double ball, double y) {
            double from = 0;
            double to = Math.PI / 2;
            double one = to - GOLDEN * (to - from);
            double other = from + GOLDEN * (to - from);
            double atOne = ball(middle, ring, ball, y, one);
            double atOther = ball(middle, ring, ball, y, other);
            for (int k = 0; k < HALVINGS; k++) {
                if (atOne > atOther) {
                    to = other;
                    other = one;
                    atOther = atOne;
                    one = to - GOLDEN * (to - from);
                    atOne = ball(middle, ring, ball, y, one);
                } else {
                    from = one;
                    one = other;
                    atOne = atOther;
                    other = from + GOLDEN * (to - from);
                    atOther = ball(middle, ring, ball, y, other);
                }
            }
            return Math.max(atOne, atOther);
        }

        /**
         * The larger X at which a ray of that Y touches a ball so far round the ring: (c·r)² = (|c|² − ρ²)|r|². One that no such ray touches counts by how far
         * off it is, so that the search finds its way.
         */
        private static double ball(double middle, double ring, double ball, double y, double round) {
            double across = ring * Math.sin(round);
            double deep = 1 - ring * Math.cos(round);
            double kept = middle * middle + across * across + deep * deep - ball * ball;
            double towards = across * y + deep;
            double a = middle * middle - kept;
            double b = middle * towards;
            double c = towards * towards - kept * (y * y + 1);
            double under = b * b - a * c;
            if (under < 0) {
                return -1 - Math.abs(y - across / deep);
            }
            return (-b - Math.sqrt(under)) / a;
        }
    }
}
