package turnalike.outline;

import turnalike.pattern.Stock;

/** An arrow that points up, planted so that the architecture test can show it would be seen. */
public final class PlantedViolation {
    private PlantedViolation() {}

    public static String reachUp(Stock stock) {
        return stock.toString();
    }
}
