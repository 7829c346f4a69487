package examples;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import turnalike.api.SolidFigures;
import turnalike.api.SpindleOrder;
import turnalike.api.WrongInput;

/** What one piece of a job weighs, where it balances and how it is laid out: {@code java examples.WeighAPattern my.job.json}. */
public final class WeighAPattern {
    private WeighAPattern() {}

    public static void main(String[] arguments) throws IOException {
        print(Path.of(arguments[0]), System.out);
    }

    static void print(Path jobFile, PrintStream out) throws IOException {
        SpindleOrder order;
        try {
            order = SpindleOrder.read(Files.readString(jobFile));
        } catch (WrongInput wrong) {
            wrong.problems().forEach(problem -> out.println(problem.line()));
            return;
        }
        SolidFigures piece = order.solid();
        out.printf(
                "%s: %.1f g, balances %.1f mm from its start%n",
                order.title(), piece.mass().grams(), piece.balance().mm());
        order.settings()
                .dividers()
                .forEach(each -> out.printf(
                        "dividers at %.2f mm strike %d marks%n",
                        each.opening().mm(), each.serves().size()));
        order.turning().cautions().forEach(out::println);
    }
}
