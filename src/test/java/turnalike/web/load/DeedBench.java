package turnalike.web.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.store.StoreFile;
import turnalike.web.jobs.DemoJob;

/**
 * What each deed of {@link LoadBench} costs by itself, in processor time of the server that answers: on ours and on {@link BareServer}, in
 * turns. Other than a time by the clock it hardly hangs on what else the machine does. The jobs go round as the fifty clients' do, so
 * that a page is mostly another than before.
 */
final class DeedBench {
    private static final int JOBS = 10;
    private static final int OF_EACH = Integer.getInteger("turnalike.load.deeds", 200);
    private static final int ROUNDS = 5;
    private static final int WARMING = 3;

    private DeedBench() {}

    private static final class Side {
        private final String name;
        private final Path file;
        private final List<JobId> jobs = new ArrayList<>();
        private final Map<Deed, Double> ms = new EnumMap<>(Deed.class);
        private int done;

        Side(String name, Path folder) {
            this.name = name;
            this.file = folder.resolve(name + ".db");
            try (JobStore store = StoreFile.openOrMake(file, Clock.systemUTC())) {
                for (int i = 0; i < JOBS; i++) {
                    jobs.add(DemoJob.keep(store));
                }
            }
        }

        /** Each deed some times; between two reads of a job another deed changed it, as among fifty clients. */
        void round(ServerProcess server, boolean counts) throws IOException {
            Client client = new Client(server.origin());
            client.enter();
            for (int part = 0; part < OF_EACH / JOBS; part++) {
                for (Deed deed : Deed.values()) {
                    double before = server.cpuMs();
                    for (JobId job : jobs) {
                        done++;
                        Client.Answer answer = deed.ask(client, job, name + done, 1, done);
                        if (answer.status() != 200) {
                            throw new IOException("%s %s: %d".formatted(name, deed, answer.status()));
                        }
                    }
                    if (counts) {
                        ms.merge(deed, (server.cpuMs() - before) / JOBS, Double::sum);
                    }
                }
            }
        }

        double each(Deed deed) {
            return ms.getOrDefault(deed, 0.0) / (ROUNDS * (OF_EACH / JOBS));
        }
    }

    public static void main(String[] arguments) throws Exception {
        System.setProperty("sun.net.http.allowRestrictedHeaders", "true");
        Path folder = Files.createTempDirectory("turnalike-deeds");
        Side ours = new Side("ours", folder);
        Side bare = new Side("bare", folder);
        List<String> serve = List.of("turnalike.Main", "serve", "--port", "0", "--store", ours.file.toString());
        try (ServerProcess program = ServerProcess.start(serve);
                ServerProcess reference =
                        ServerProcess.start(LoadBench.bare(bare.file, program.origin(), ours.jobs.get(0)))) {
            for (int round = 0; round < WARMING + ROUNDS; round++) {
                ours.round(program, round >= WARMING);
                bare.round(reference, round >= WARMING);
            }
        }
        for (Deed deed : Deed.values()) {
            System.out.printf(
                    Locale.ROOT,
                    "%-5s  processor time an answer: ours %6.2f ms | bare %6.2f ms | ratio %.1f%n",
                    deed,
                    ours.each(deed),
                    bare.each(deed),
                    ours.each(deed) / bare.each(deed));
        }
    }
}
