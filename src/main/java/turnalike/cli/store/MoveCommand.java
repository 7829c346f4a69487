package turnalike.cli.store;

import java.io.PrintWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.Today;
import turnalike.job.kept.KeptSummary;
import turnalike.store.StoreMove;
import turnalike.store.StorePlace;
import turnalike.units.Article;

@Command(
        name = "move",
        description = {
            "Carries a whole store to another place: every job with its history, log, photographs and times, those in the bin too. From a"
                    + " file to a database, back, or from one file to another.",
            "Everything is written at one stroke and read back before it is kept; the store it came from stays where it is."
        },
        footer = {"", "Example: turnalike move shop.db postgresql://anna@bench-pc/shop"},
        mixinStandardHelpOptions = true)
public final class MoveCommand implements Runnable {
    @Parameters(index = "0", paramLabel = "STORE", description = "The store, named as after --store.")
    private String from = "";

    @Parameters(index = "1", paramLabel = "TO", description = "A new file, or a database with no job in it.")
    private String to = "";

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean json;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        StorePlace source = Stores.place("STORE", from);
        StorePlace target = Stores.place("TO", to);
        StoreMove.Moved moved = Stores.told(() -> StoreMove.move(source, target, Today.clock()));
        PrintWriter console = spec.commandLine().getOut();
        if (json) {
            console.print(KeptSummary.moved(moved.jobs(), moved.rows(), moved.digest()));
        } else {
            console.println("Moved %s from %s to %s; %d rows were read back and are the same, digest %s."
                    .formatted(Article.count(moved.jobs(), "job"), source, target, moved.rows(), moved.digest()));
            console.println("%s stays as it is: use it no more, so that nothing is logged there.".formatted(source));
        }
        console.flush();
    }
}
