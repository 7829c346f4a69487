package turnalike.cli.page;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.UserError;
import turnalike.cli.store.Stores;

@Command(
        name = "devices",
        description = {
            "Lists the devices that were paired with 'serve --lan' on this machine, each with its id and what it may do; shows one out, or lets"
                    + " it do more or less; makes a token for a program.",
            "It counts from the device's next request on, also while 'serve' runs."
        },
        footer = {
            "",
            "Examples: turnalike devices --store shop.db --show-out 3f09ab12cd45",
            "          turnalike devices --store shop.db --token \"the shop's ledger\" --may log"
        },
        mixinStandardHelpOptions = true)
public final class DevicesCommand implements Runnable {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    @Option(names = "--store", paramLabel = "STORE", description = Stores.OPTION)
    private Optional<String> store = Optional.empty();

    @Option(names = "--show-out", paramLabel = "ID", description = "Show this device out: it must be paired again.")
    private Optional<String> out = Optional.empty();

    @Option(names = "--only-log", paramLabel = "ID", description = "Let this device only log and turn.")
    private Optional<String> onlyLog = Optional.empty();

    @Option(names = "--patterns", paramLabel = "ID", description = "Let this device change patterns too.")
    private Optional<String> patterns = Optional.empty();

    @Option(
            names = "--token",
            paramLabel = "NAME",
            description =
                    "Make a token for a program of this name, which it sends as Authorization: Bearer; it is shown this once.")
    private Optional<String> token = Optional.empty();

    @Option(
            names = "--may",
            paramLabel = "WHAT",
            description = "With --token: log (only log and turn, the usual) or patterns (change patterns too).")
    private Optional<String> may = Optional.empty();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        Path file = ServeCommand.devices(store.map(Stores::place)).get();
        PageServer.DeviceBook devices = PageServer.of(spec).devices(file);
        out.ifPresent(id -> require("--show-out", id, devices.showOut(id)));
        onlyLog.ifPresent(id -> require("--only-log", id, devices.allow(id, false)));
        patterns.ifPresent(id -> require("--patterns", id, devices.allow(id, true)));
        Optional<String> made = token(devices);
        print(devices.list());
        made.ifPresent(each -> spec.commandLine().getOut().println("Token, shown this once: " + each));
        spec.commandLine().getOut().flush();
    }

    private Optional<String> token(PageServer.DeviceBook devices) {
        String what = may.orElse("log");
        if (!List.of("log", "patterns").contains(what)) {
            throw UserError.of("--may", "was '%s'".formatted(what), "give log or patterns");
        }
        if (token.isEmpty() && may.isPresent()) {
            throw UserError.of("--may", "says what a token may do", "make one with --token NAME");
        }
        return token.map(name -> devices.token(name, what.equals("patterns"))
                .orElseThrow(() -> UserError.of("--token", "is no device's name", "give one of 1 to 40 letters")));
    }

    private static void require(String option, String id, boolean found) {
        if (!found) {
            throw UserError.of(
                    option,
                    "no device '%s' is paired".formatted(id.replaceAll("\\p{Cntrl}", "?")),
                    "give an id as 'turnalike devices' lists it");
        }
    }

    private void print(List<PageServer.Paired> devices) {
        PrintWriter console = spec.commandLine().getOut();
        if (devices.isEmpty()) {
            console.println("No device is paired.");
        }
        devices.forEach(each -> console.println("%s  %s  %s, paired %s"
                .formatted(
                        each.id(),
                        each.name(),
                        each.role(),
                        TIME.format(each.paired().atZone(ZoneId.systemDefault())))));
        console.flush();
    }
}
