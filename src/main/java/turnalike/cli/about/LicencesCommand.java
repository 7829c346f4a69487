package turnalike.cli.about;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.OutputFolder;
import turnalike.cli.kit.UserError;
import turnalike.cli.kit.WrittenFiles;
import turnalike.release.Libraries;
import turnalike.release.Library;
import turnalike.release.LicenceTexts;

@Command(
        name = "licences",
        description =
                "Lists the libraries that the program ships with and their licences; of one, the licence in full.",
        footer = {"", "Example: turnalike licences picocli"},
        mixinStandardHelpOptions = true)
public final class LicencesCommand implements Runnable {
    private static final String OWN =
            "Turnalike itself stands under Apache-2.0; the typeface of its sheets, Liberation Sans, under the SIL"
                    + " Open Font License 1.1.";

    @Parameters(arity = "0..1", paramLabel = "LIBRARY", description = "Prints the licence of this one in full.")
    private Optional<String> name = Optional.empty();

    @Option(names = "--out", paramLabel = "FOLDER", description = "Writes the list and every licence into this folder.")
    private Optional<Path> out = Optional.empty();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        PrintWriter console = spec.commandLine().getOut();
        if (name.isPresent()) {
            console.print(full(library(name.get())));
        } else {
            console.print(table());
        }
        out.ifPresent(folder -> write(new OutputFolder(folder), console));
        console.flush();
    }

    private static Library library(String name) {
        return Libraries.find(name)
                .orElseThrow(() -> UserError.of(
                        "LIBRARY",
                        "the program ships with none of the name '%s'".formatted(name),
                        "'turnalike licences' lists them"));
    }

    private static String table() {
        StringBuilder table = new StringBuilder(OWN).append("\n\n");
        for (Library each : Libraries.list()) {
            table.append(
                    "%-22s %-9s %-38s %s\n".formatted(each.name(), each.version(), each.licence(), each.address()));
        }
        return table.append(
                        "\nOne in full: turnalike licences LIBRARY. The licences of Java itself lie in its folder \"legal\".\n")
                .toString();
    }

    private static String full(Library library) {
        return LicenceTexts.of(library).stream()
                .map(each -> "%s %s: %s\n\n%s\n"
                        .formatted(
                                library.name(),
                                library.version(),
                                each.name(),
                                each.text().stripTrailing()))
                .collect(Collectors.joining("\n"));
    }

    private static void write(OutputFolder folder, PrintWriter console) {
        folder.write("libraries.txt", table());
        Libraries.list().forEach(each -> folder.write(each.name() + ".txt", full(each)));
        console.print(WrittenFiles.list(folder.written()));
    }
}
