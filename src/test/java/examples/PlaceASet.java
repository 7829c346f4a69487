package examples;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import turnalike.api.PlacedSet;
import turnalike.api.SpindleOrder;

/** Which piece stands where, so that a wheel has no heavy spot: {@code java examples.PlaceASet wheel.job.json pieces.csv}. */
public final class PlaceASet {
    private PlaceASet() {}

    public static void main(String[] arguments) throws IOException {
        print(Path.of(arguments[0]), Path.of(arguments[1]), System.out);
    }

    static void print(Path jobFile, Path pieces, PrintStream out) throws IOException {
        SpindleOrder order = SpindleOrder.read(Files.readString(jobFile));
        PlacedSet set = order.place(Files.readString(pieces));
        for (int place = 0; place < set.order().size(); place++) {
            out.printf("place %d: piece %s%n", place + 1, set.order().get(place));
        }
        out.printf("left over: %.3f%s%n", set.leftOver(), set.proven() ? ", and no order leaves less" : "");
        set.warnings().forEach(out::println);
    }
}
