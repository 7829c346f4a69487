package turnalike.web.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.KeptPiece;
import turnalike.store.StoreFile;
import turnalike.web.jobs.DemoJob;

/**
 * Fifty clients that read pages, edit jobs and log pieces at the bench, each the next thing as soon as the last is answered, for a minute; in
 * turns on the program and on {@link BareServer}. The aim on two idle cores: 99 of 100 answers within 500 ms, of bench entries within 300 ms,
 * no slower than twice the bare server, and every edit that was acknowledged in the store.
 */
final class LoadBench {
    private static final int CLIENTS = Integer.getInteger("turnalike.load.clients", 50);
    private static final int SECONDS = Integer.getInteger("turnalike.load.seconds", 60);
    private static final int JOBS = 10;
    private static final int TURNS = 4;
    private static final int WARMING_S = 5;

    private LoadBench() {}

    /** One server under load, with what it answered. */
    private static final class Loaded {
        private final String name;
        private final Path file;
        private final List<JobId> jobs;
        private final Map<Deed, ConcurrentLinkedQueue<Double>> times = new ConcurrentHashMap<>();
        private final Set<String> pieces = ConcurrentHashMap.newKeySet();
        private final Map<JobId, Set<String>> titles = new ConcurrentHashMap<>();
        private final ConcurrentLinkedQueue<String> refused = new ConcurrentLinkedQueue<>();

        Loaded(String name, Path file) {
            this.name = name;
            this.file = file;
            this.jobs = new ArrayList<>();
            try (JobStore store = StoreFile.openOrMake(file, Clock.systemUTC())) {
                for (int i = 0; i < JOBS; i++) {
                    jobs.add(DemoJob.keep(store));
                }
            }
        }

        /** Times of the warming do not count. */
        void forget() {
            times.clear();
        }

        void run(String origin, int seconds, int turn) throws Exception {
            ExecutorService clients = Executors.newFixedThreadPool(CLIENTS);
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
            List<Future<?>> running = new ArrayList<>();
            for (int i = 0; i < CLIENTS; i++) {
                int number = i;
                running.add(clients.submit(() -> {
                    client(origin, end, turn, number);
                    return number;
                }));
            }
            for (Future<?> each : running) {
                each.get();
            }
            clients.shutdown();
        }

        private void client(String origin, long end, int turn, int number) throws IOException {
            Random random = new Random(turn * 1000L + number);
            Client client = new Client(origin);
            client.enter();
            for (int i = 0; System.nanoTime() < end; i++) {
                Deed deed = Deed.drawn(random);
                JobId job = jobs.get(random.nextInt(JOBS));
                String name = "%d-%d-%d".formatted(turn, number, i);
                long began = System.nanoTime();
                Client.Answer answer = deed.ask(client, job, name, turn * 100 + number, i);
                times(deed).add((System.nanoTime() - began) / 1e6);
                if (answer.status() != 200) {
                    refused.add(deed + " " + answer.status());
                } else if (deed == Deed.BENCH) {
                    pieces.add(name);
                } else if (deed == Deed.EDIT) {
                    titles.computeIfAbsent(job, first -> ConcurrentHashMap.newKeySet())
                            .add(name);
                }
            }
        }

        /** Every piece and every edit that was acknowledged, looked for in the file. */
        void account() {
            int lost = 0;
            int steps = 0;
            Set<String> kept = ConcurrentHashMap.newKeySet();
            try (KeptJobs store = StoreFile.openToRead(file)) {
                for (JobId job : jobs) {
                    KeptJob standing = store.find(job).orElseThrow();
                    standing.pieces().stream().map(KeptPiece::label).forEach(kept::add);
                    steps += standing.times().steps() - 2;
                }
            }
            for (String piece : pieces) {
                lost += kept.contains(piece) ? 0 : 1;
            }
            int edits = titles.values().stream().mapToInt(Set::size).sum();
            System.out.printf(
                    Locale.ROOT,
                    "%s: %d pieces and %d edits acknowledged, %d steps kept, %d pieces lost, refused %s%n",
                    name,
                    pieces.size(),
                    edits,
                    steps,
                    lost,
                    refused.stream().collect(Collectors.groupingBy(each -> each, Collectors.counting())));
            if (lost > 0 || steps < pieces.size() + edits) {
                throw new IllegalStateException(name + " acknowledged what it did not keep");
            }
        }

        List<Double> sorted(Deed deed) {
            return times(deed).stream().sorted().toList();
        }

        private ConcurrentLinkedQueue<Double> times(Deed deed) {
            return times.computeIfAbsent(deed, first -> new ConcurrentLinkedQueue<>());
        }
    }

    public static void main(String[] arguments) throws Exception {
        System.setProperty("sun.net.http.allowRestrictedHeaders", "true");
        System.setProperty("http.maxConnections", Integer.toString(CLIENTS));
        Path folder = Files.createTempDirectory("turnalike-load");
        Loaded ours = new Loaded("ours", folder.resolve("ours.db"));
        Loaded bare = new Loaded("bare", folder.resolve("bare.db"));
        List<String> serve = List.of("turnalike.Main", "serve", "--port", "0", "--store", ours.file.toString());
        try (ServerProcess program = ServerProcess.start(serve);
                ServerProcess reference = ServerProcess.start(bare(bare.file, program.origin(), ours.jobs.get(0)))) {
            System.out.printf("%d clients, %d s on each server in %d turns%n", CLIENTS, SECONDS, TURNS);
            ours.run(program.origin(), WARMING_S, 0);
            bare.run(reference.origin(), WARMING_S, 0);
            ours.forget();
            bare.forget();
            for (int turn = 1; turn <= TURNS; turn++) {
                ours.run(program.origin(), SECONDS / TURNS, turn);
                bare.run(reference.origin(), SECONDS / TURNS, turn);
            }
            report(ours, bare);
            System.out.printf("most memory: ours %d MB, bare %d MB%n", program.peakMb(), reference.peakMb());
        }
        ours.account();
        bare.account();
    }

    /** Asks ours how long its answers are. */
    static List<String> bare(Path file, String origin, JobId job) throws IOException {
        Client client = new Client(origin);
        client.enter();
        int page = client.get("/jobs/" + job.text()).body().length();
        int part = client.post("/jobs/" + job.text() + "/fields", "title=Load")
                .body()
                .length();
        System.out.printf("a page of %d letters, after an edit %d%n", page, part);
        return List.of(BareServer.class.getName(), file.toString(), Integer.toString(page), Integer.toString(part));
    }

    private static void report(Loaded ours, Loaded bare) {
        for (Deed deed : Deed.values()) {
            List<Double> here = ours.sorted(deed);
            List<Double> there = bare.sorted(deed);
            System.out.printf(
                    Locale.ROOT,
                    "%-5s  ours %6d: p50 %6.1f p99 %6.1f most %6.1f ms | bare %6d: p50 %6.1f p99 %6.1f most %6.1f ms"
                            + " | ratio p50 %.1f p99 %.1f%n",
                    deed,
                    here.size(),
                    at(here, 0.5),
                    at(here, 0.99),
                    at(here, 1),
                    there.size(),
                    at(there, 0.5),
                    at(there, 0.99),
                    at(there, 1),
                    at(here, 0.5) / at(there, 0.5),
                    at(here, 0.99) / at(there, 0.99));
        }
    }

    private static double at(List<Double> sorted, double share) {
        return sorted.isEmpty() ? 0 : sorted.get((int) Math.ceil(share * sorted.size()) - 1);
    }
}
