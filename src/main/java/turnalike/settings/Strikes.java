package turnalike.settings;

import java.util.Arrays;

/**
 * From where and with which opening each mark is struck. Openings are counted as the plan counts them: the pinned ones first, then those
 * chosen.
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Strikes(int[] from, int[] with, int[] steps) {
    /** In {@link #from} and {@link #with}: stands before any step. */
    static final int GIVEN = -1;

    /** In {@link #steps}: not struck yet. */
    static final int FAR = Integer.MAX_VALUE;

    /** Nothing is struck yet; the given marks stand. */
    static Strikes none(Spans spans, int[] stick) {
        int[] from = new int[spans.marks()];
        int[] steps = new int[spans.marks()];
        Arrays.fill(from, GIVEN);
        Arrays.fill(steps, FAR);
        for (int mark = 0; mark < steps.length; mark++) {
            steps[mark] = spans.given[mark] ? 0 : FAR;
        }
        for (int mark : stick) {
            steps[mark] = 0;
        }
        return new Strikes(from, from.clone(), steps);
    }

    void strike(int mark, int start, int opening) {
        from[mark] = start;
        with[mark] = opening;
        steps[mark] = steps[start] + 1;
    }

    void takeBack(int mark) {
        from[mark] = GIVEN;
        with[mark] = GIVEN;
        steps[mark] = FAR;
    }

    boolean isStruck(int mark) {
        return from[mark] != GIVEN;
    }

    /** Whether every mark stands. */
    boolean isWhole() {
        return Arrays.stream(steps).noneMatch(each -> each == FAR);
    }

    Strikes copy() {
        return new Strikes(from.clone(), with.clone(), steps.clone());
    }

    /** The sum of steps over the marks struck. */
    int sum() {
        int sum = 0;
        for (int mark = 0; mark < steps.length; mark++) {
            sum += isStruck(mark) ? steps[mark] : 0;
        }
        return sum;
    }
}
