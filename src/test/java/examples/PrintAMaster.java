package examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import turnalike.api.SpindleOrder;
import turnalike.units.Length;

/** A body to print a master from, and a table of stations: {@code java examples.PrintAMaster my.job.json folder}. */
public final class PrintAMaster {
    private PrintAMaster() {}

    public static void main(String[] arguments) throws IOException {
        write(Path.of(arguments[0]), Path.of(arguments[1]));
    }

    static void write(Path jobFile, Path folder) throws IOException {
        SpindleOrder order = SpindleOrder.read(Files.readString(jobFile));
        Files.write(folder.resolve("piece.3mf"), order.threeMf());
        Files.writeString(folder.resolve("stations.csv"), order.stations(Length.ofMm(10)));
    }
}
