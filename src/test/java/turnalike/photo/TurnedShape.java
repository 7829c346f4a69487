package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** An invented spindle as a fine chain of points, x along the axis from 0 and radius there, both in mm: the exact truth of a made picture. */
@SuppressWarnings("ArrayRecordComponent") // never compared
public record TurnedShape(double[] x, double[] r) {
    public static TurnedShape of(List<double[]> points) {
        return new TurnedShape(
                points.stream().mapToDouble(p -> p[0]).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray());
    }

    public double length() {
        return x[x.length - 1];
    }

    double widest() {
        double most = 0;
        for (double radius : r) {
            most = Math.max(most, radius);
        }
        return most;
    }

    /** The radius at a place; of a shoulder the mean of its two. */
    public double at(double place) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i + 1 < x.length; i++) {
            if (x[i] <= place && place <= x[i + 1]) {
                double share = x[i + 1] > x[i] ? (place - x[i]) / (x[i + 1] - x[i]) : 0.5;
                sum += r[i] + share * (r[i + 1] - r[i]);
                count++;
            }
        }
        return count == 0 ? 0 : sum / count;
    }

    /** Members drawn at random between two plain ends; about so long and so thick. */
    static TurnedShape random(long seed, double length, double thick) {
        SplittableRandom dice = new SplittableRandom(seed);
        List<double[]> points = new ArrayList<>();
        double radius = thick * (0.55 + 0.4 * dice.nextDouble());
        double at = 0;
        points.add(new double[] {0, radius});
        at = straight(points, at, 12 + 25 * dice.nextDouble(), radius, radius);
        while (at < length - 60) {
            double room = length - 40 - at;
            switch (dice.nextInt(6)) {
                case 0 -> {
                    double wide = Math.min(room, 6 + 16 * dice.nextDouble());
                    double crown = Math.min(thick, radius + wide / 2 * (0.5 + 0.5 * dice.nextDouble()));
                    at = ellipse(points, at, wide, radius, crown);
                }
                case 1 -> {
                    double wide = Math.min(room, 8 + 25 * dice.nextDouble());
                    double floor = Math.max(thick * 0.3, radius - wide / 2 * (0.4 + 0.5 * dice.nextDouble()));
                    at = ellipse(points, at, wide, radius, floor);
                }
                case 2 -> {
                    double next = thick * (0.4 + 0.5 * dice.nextDouble());
                    at = straight(points, at, Math.min(room, 40 + 130 * dice.nextDouble()), radius, next);
                    radius = next;
                }
                case 3 -> {
                    double next = thick * (0.4 + 0.55 * dice.nextDouble());
                    points.add(new double[] {at, next});
                    at = straight(points, at, 3 + 4 * dice.nextDouble(), next, next);
                    radius = next;
                }
                case 4 -> {
                    double next = thick * (0.4 + 0.55 * dice.nextDouble());
                    at = wave(points, at, Math.min(room, 30 + 60 * dice.nextDouble()), radius, next);
                    radius = next;
                }
                default ->
                    at = ellipse(
                            points,
                            at,
                            Math.min(room, 60 + 90 * dice.nextDouble()),
                            radius,
                            Math.min(thick, radius * (1.1 + 0.3 * dice.nextDouble())));
            }
        }
        straight(points, at, length - at, radius, radius);
        return of(points);
    }

    /** Long cylinders and posts that taper by little, with beads and shoulders between. */
    static TurnedShape post(long seed, double length, double thick) {
        SplittableRandom dice = new SplittableRandom(seed);
        List<double[]> points = new ArrayList<>();
        double radius = thick * (0.5 + 0.4 * dice.nextDouble());
        points.add(new double[] {0, radius});
        double at = 0;
        while (at < length - 60) {
            double next = radius * (1 - 0.03 * dice.nextDouble() * dice.nextInt(2));
            at = straight(points, at, Math.min(length - 30 - at, 50 + 110 * dice.nextDouble()), radius, next);
            radius = next;
            if (dice.nextInt(3) > 0) {
                at = ellipse(points, at, Math.min(20, length - 20 - at), radius, Math.min(thick, radius + 6));
            }
            double step = thick * (0.45 + 0.5 * dice.nextDouble());
            points.add(new double[] {at, step});
            radius = step;
        }
        straight(points, at, length - at, radius, radius);
        return of(points);
    }

    /** Half the side where the squares are, members drawn at random between the two. */
    static TurnedShape betweenSquares(long seed, double length, double thick, double half, List<double[]> squares) {
        double from = squares.get(0)[1];
        TurnedShape turned = random(seed, squares.get(1)[0] - from, thick);
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {0, half});
        points.add(new double[] {from, half});
        for (int i = 0; i < turned.x.length; i++) {
            points.add(new double[] {from + turned.x[i], Math.min(half, turned.r[i])});
        }
        points.add(new double[] {squares.get(1)[0], half});
        points.add(new double[] {length, half});
        return of(points);
    }

    public static double straight(List<double[]> points, double at, double length, double from, double to) {
        for (int i = 1; i <= 20; i++) {
            points.add(new double[] {at + length * i / 20, from + (to - from) * i / 20});
        }
        return at + length;
    }

    public static double ellipse(List<double[]> points, double at, double length, double root, double crown) {
        int steps = 90;
        for (int i = 1; i <= steps; i++) {
            double angle = Math.PI * i / steps;
            points.add(new double[] {at + length / 2 * (1 - Math.cos(angle)), root + (crown - root) * Math.sin(angle)});
        }
        return at + length;
    }

    public static double wave(List<double[]> points, double at, double length, double from, double to) {
        for (int i = 1; i <= 60; i++) {
            double share = i / 60.0;
            points.add(new double[] {at + length * share, from + (to - from) * (1 - Math.cos(Math.PI * share)) / 2});
        }
        return at + length;
    }
}
