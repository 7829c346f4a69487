package turnalike;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import turnalike.cli.Program;
import turnalike.cli.page.PageServer;
import turnalike.job.kept.JobStore;
import turnalike.web.Site;
import turnalike.web.jobs.FirstJobs;
import turnalike.web.lan.DeviceRole;
import turnalike.web.lan.Devices;
import turnalike.web.lan.Sharing;

/** The program's entrance. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        // Figures must not change their decimal sign or digits with the machine's language, nor text its bytes with
        // its code page.
        Locale.setDefault(Locale.ROOT);
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        int code = Program.run(List.of(arguments), out, err, new SitePages());
        out.flush();
        System.exit(code);
    }

    /** The page of {@code web}, for the command line. */
    private static final class SitePages implements PageServer {
        @Override
        public Page open(Reach reach, JobStore jobs, Consumer<Exception> faults) throws PortTaken {
            Optional<Sharing> sharing = reach.shared()
                    .map(shared -> Sharing.of(shared.devices(), Clock.system(ZoneId.systemDefault()), shared.code()))
                    .map(all -> reach.outside().behind().isPresent() ? all.behindProxy() : all);
            try {
                Site site = Site.start(
                        new Site.Reach(reach.port(), sharing, reach.outside(), reach.renewal()), jobs, faults);
                Future<Integer> rehearsal = site.rehearse();
                return new Page() {
                    @Override
                    public String address() {
                        return site.address();
                    }

                    @Override
                    public List<String> otherAddresses() {
                        return site.otherAddresses();
                    }

                    @Override
                    public void close() {
                        rehearsal.cancel(true);
                        site.close();
                    }
                };
            } catch (Site.PortTaken taken) {
                throw new PortTaken(taken);
            }
        }

        @Override
        public DeviceBook devices(Path file) {
            Devices devices = new Devices(file, Clock.system(ZoneId.systemDefault()));
            return new DeviceBook() {
                @Override
                public List<Paired> list() {
                    return devices.list().stream()
                            .map(each -> new Paired(
                                    each.id(),
                                    each.name(),
                                    each.paired(),
                                    each.role().words()))
                            .toList();
                }

                @Override
                public boolean showOut(String id) {
                    return devices.revoke(id);
                }

                @Override
                public Optional<String> token(String name, boolean patterns) {
                    return devices.token(name, role(patterns));
                }

                @Override
                public boolean allow(String id, boolean patterns) {
                    return devices.allow(id, role(patterns));
                }

                private DeviceRole role(boolean patterns) {
                    return patterns ? DeviceRole.CHANGE : DeviceRole.LOG;
                }
            };
        }

        @Override
        public void begin(JobStore jobs) {
            FirstJobs.keep(jobs);
        }
    }
}
