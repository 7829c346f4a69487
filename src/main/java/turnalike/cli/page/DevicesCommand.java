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
                    + " it do more or less.",
            "It counts from the device's next request on, also while 'serve' runs."
        },
        footer = {"", "Example: turnalike devices --store shop.db --show-out 3f09ab12cd45"},
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

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        Path file = ServeCommand.devices(store.map(Stores::place)).get();
        PageServer.DeviceBook devices = PageServer.of(spec).devices(file);
        out.ifPresent(id -> require("--show-out", id, devices.showOut(id)));
        onlyLog.ifPresent(id -> require("--only-log", id, devices.allow(id, false)));
        patterns.ifPresent(id -> require("--patterns", id, devices.allow(id, true)));
        print(devices.list());
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
