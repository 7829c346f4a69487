package turnalike.web.load;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.StoreReport;
import turnalike.store.StoreFile;
import turnalike.units.Mass;

/**
 * Ten devices' day, compressed: each logs pieces at the bench of one server, again and again until it is told that a piece is kept. The server is
 * killed every few seconds; so is a device, which then never learns what became of its last entry. In one life of four no file may grow far beyond
 * what the store has for a while, as on a full disk ({@code prlimit --fsize}); in another the clock is set back by up to two days. At the end
 * the counters that went in must come out: every piece told as kept is there once with its own weight, and nothing is there that nobody sent.
 */
final class Soak {
    private static final int DEVICES = 10;
    private static final long SHORTEST_LIFE_MS = 1500;
    private static final int LIFE_MS = 4000;
    private static final int PAUSE_MS = 60;
    private static final int TWO_DAYS_S = 172_800;

    /** What is free on the full disk: a few entries' worth. */
    private static final long ROOM_BYTES = 8 * 1024;

    private final Path store;
    private final Random random;
    private final AtomicInteger numbers = new AtomicInteger();
    private final AtomicInteger sent = new AtomicInteger();
    private final AtomicInteger refused = new AtomicInteger();
    private final AtomicInteger unanswered = new AtomicInteger();
    private final AtomicInteger abandoned = new AtomicInteger();
    private final AtomicInteger faults = new AtomicInteger();
    private final Map<String, Map<String, Integer>> told = new ConcurrentHashMap<>();
    private final Map<String, Map<String, Integer>> unsure = new ConcurrentHashMap<>();
    private volatile Optional<Life> life = Optional.empty();
    private volatile boolean over;

    private Soak(Path folder, long seed) {
        this.store = folder.resolve("shop.db");
        this.random = new Random(seed);
    }

    /** Where a server is to be found while it lives. */
    private record Life(String origin, String job) {}

    /**
     * Runs and reports; ends with 1 where anything is lost, doubled or made up.
     *
     * @param arguments a folder, how many seconds, and a seed
     */
    public static void main(String[] arguments) throws Exception {
        System.setProperty("sun.net.http.allowRestrictedHeaders", "true"); // a browser sends its origin
        Soak soak = new Soak(Path.of(arguments[0]), Long.parseLong(arguments[2]));
        boolean right = soak.run(Long.parseLong(arguments[1]));
        System.exit(right ? 0 : 1);
    }

    private boolean run(long seconds) throws Exception {
        List<Thread> devices = new ArrayList<>();
        for (int device = 0; device < DEVICES; device++) {
            Random own = new Random(random.nextLong());
            Thread thread = new Thread(() -> device(own));
            thread.start();
            devices.add(thread);
        }
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
        int lives = 0;
        int full = 0;
        int setBack = 0;
        while (System.nanoTime() < end) {
            int kind = lives % 4;
            boolean limited = kind == 2;
            long back = kind == 3 ? 1 + random.nextInt(TWO_DAYS_S) : 0;
            live(limited, back);
            lives++;
            full += limited ? 1 : 0;
            setBack += back > 0 ? 1 : 0;
        }
        over = true;
        for (Thread device : devices) {
            device.join();
        }
        System.out.printf(
                Locale.ROOT,
                "%d lives, each ended by a kill; the disk full in %d, the clock set back in %d%n",
                lives,
                full,
                setBack);
        return counted();
    }

    /** One life of the server, from its start to its kill. A disk that fills up in it is emptied again before its end. */
    private void live(boolean limited, long back) throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process process = new ProcessBuilder(
                        java,
                        "-XX:+UseSerialGC",
                        "-XX:-UsePerfData",
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SoakServer.class.getName(),
                        store.toString(),
                        Long.toString(back))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        Thread reader = new Thread(() -> read(process, limited));
        reader.start();
        waitForLife(process);
        Thread.sleep(SHORTEST_LIFE_MS + random.nextInt(LIFE_MS));
        if (limited) {
            // No file of its may grow past this any more: to whoever writes, a full disk.
            limit(process, Long.toString(Files.size(store) + ROOM_BYTES));
            Thread.sleep(LIFE_MS);
            limit(process, "unlimited");
            Thread.sleep(SHORTEST_LIFE_MS + random.nextInt(LIFE_MS));
        }
        process.destroyForcibly().waitFor();
        life = Optional.empty();
        reader.join();
    }

    private static void limit(Process process, String bytes) throws IOException, InterruptedException {
        String pid = Long.toString(process.pid());
        int code = new ProcessBuilder("prlimit", "--pid", pid, "--fsize=" + bytes + ":")
                .inheritIO()
                .start()
                .waitFor();
        if (code != 0) {
            throw new IOException("prlimit, of util-linux, is needed to fill the disk");
        }
    }

    private void waitForLife(Process process) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (life.isEmpty() && process.isAlive() && System.nanoTime() < end) {
            Thread.sleep(5);
        }
    }

    private void read(Process process, boolean limited) {
        String job = "";
        try (BufferedReader lines = process.inputReader()) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.startsWith("job ")) {
                    job = line.substring(4);
                } else if (line.startsWith("at ")) {
                    life = Optional.of(new Life(line.substring(3).replaceAll("/$", ""), job));
                } else if (line.startsWith("fault ") && !limited) {
                    faults.incrementAndGet();
                    System.out.println(line);
                }
            }
        } catch (IOException killed) {
            // Its end is what was wanted.
        }
    }

    /** Sends one entry after another, each until it is told what became of it, or the device is switched off. */
    private void device(Random own) {
        while (!over) {
            Optional<Life> at = life;
            if (at.isEmpty()) {
                rest(10);
                continue;
            }
            int number = numbers.incrementAndGet();
            int mass = 100 + own.nextInt(900);
            entry(at.get(), "p" + number, mass, "%016x".formatted(0x50ac000000000000L + number), own);
            rest(own.nextInt(PAUSE_MS));
        }
    }

    private void entry(Life at, String piece, int mass, String serial, Random own) {
        unsure.computeIfAbsent(at.job(), job -> new ConcurrentHashMap<>()).put(piece, mass);
        sent.incrementAndGet();
        // A restarted server has another address and still has the job: the entry goes to it there.
        for (Optional<Life> now = Optional.of(at); !over; now = life) {
            if (own.nextInt(200) == 0) {
                abandoned.incrementAndGet();
                return;
            }
            if (now.isPresent() && isKept(now.get(), at.job(), serial, piece, mass)) {
                told.computeIfAbsent(at.job(), job -> new ConcurrentHashMap<>()).put(piece, mass);
                return;
            }
            rest(50);
        }
    }

    private boolean isKept(Life now, String job, String serial, String piece, int mass) {
        try {
            Client client = new Client(now.origin());
            client.enter();
            int status = client.entry(job, serial, piece, mass).status();
            if (status != 200) {
                refused.incrementAndGet();
            }
            return status == 200;
        } catch (IOException killed) {
            unanswered.incrementAndGet();
            return false;
        }
    }

    private static void rest(int milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** What went in beside what is there. */
    private boolean counted() {
        StoreReport report = StoreFile.check(store);
        int kept = 0;
        int there = 0;
        int lost = 0;
        int doubled = 0;
        int strange = 0;
        try (JobStore jobs = StoreFile.open(store, Clock.systemUTC())) {
            for (String job : unsure.keySet()) {
                JobId id = JobId.parse(job).get();
                Map<String, Integer> mine = told.getOrDefault(job, Map.of());
                kept += mine.size();
                Optional<KeptJob> found = jobs.find(id);
                lost += found.isEmpty() ? mine.size() : 0;
                if (found.isEmpty()) {
                    continue;
                }
                there += found.get().pieces().size();
                lost += (int) mine.entrySet().stream()
                        .filter(each -> !isThere(found.get(), each.getKey(), each.getValue()))
                        .count();
                Map<String, Integer> sentToIt = unsure.get(job);
                strange += (int) found.get().pieces().stream()
                        .filter(piece -> !sentToIt.containsKey(piece.label())
                                || !isThere(found.get(), piece.label(), sentToIt.getOrDefault(piece.label(), 0)))
                        .count();
                // One step for the job and one for each piece: an entry sent again is not kept again.
                doubled += jobs.done(id).size() - 1 - found.get().pieces().size();
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%d entries of %d devices: %d told as kept, %d there; %d sent without an answer, %d refused, %d given up%n",
                sent.get(),
                DEVICES,
                kept,
                there,
                unanswered.get(),
                refused.get(),
                abandoned.get());
        System.out.printf(
                Locale.ROOT,
                "lost %d, kept twice %d, made up %d, faults on a disk with room %d; the store is %s%n",
                lost,
                doubled,
                strange,
                faults.get(),
                report.sound() ? "sound" : "NOT sound: " + report.faults());
        if (refused.get() == 0) {
            System.out.println("the disk was never full, so that was not tried");
        }
        return refused.get() > 0
                && lost == 0
                && doubled == 0
                && strange == 0
                && faults.get() == 0
                && report.sound()
                && kept > 0
                && there >= kept;
    }

    private static boolean isThere(KeptJob job, String label, int grams) {
        return Stream.of(job)
                .flatMap(each -> each.find(label).stream())
                .anyMatch(piece -> piece.piece().mass().equals(Optional.of(Mass.ofGrams(grams))));
    }
}
