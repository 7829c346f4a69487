package turnalike.web;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * The pieces' page with tables of growing size: a paste, the page, one more piece, each from the request to the last byte of the answer. What
 * counts is that the times grow no faster than the table, and the page not at all. The aim for 10,000: 3 s, 300 ms, 50 ms.
 */
final class PiecesPageBench {
    private static final int ROUNDS = 7;
    private static final OperatingSystemMXBean CPU =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private PiecesPageBench() {}

    private static String table(int pieces) {
        Random random = new Random(pieces);
        StringBuilder out = new StringBuilder("piece,mass_g,length,d1,d2\n");
        for (int i = 1; i <= pieces; i++) {
            out.append(String.format(
                    Locale.ROOT,
                    "%d,%.1f,%.2f,%.3f,%.3f%n",
                    i,
                    139 + random.nextInt(60) / 10.0,
                    15 + random.nextInt(9) / 100.0,
                    1 + random.nextInt(20) / 1000.0,
                    0.9 + random.nextInt(20) / 1000.0));
        }
        return out.toString();
    }

    private interface Asking {
        HttpResponse<String> ask() throws Exception;
    }

    /** The CPU time is that of the whole program, compilers and client included: on a busy machine it says more than the clock. */
    private record Timed(double ms, double cpuMs, int length) {
        static Timed of(Asking asking) throws Exception {
            long began = System.nanoTime();
            long beganCpu = CPU.getProcessCpuTime();
            HttpResponse<String> answer = asking.ask();
            if (answer.statusCode() >= 400) {
                throw new IllegalStateException("answered " + answer.statusCode());
            }
            return new Timed(
                    (System.nanoTime() - began) / 1e6,
                    (CPU.getProcessCpuTime() - beganCpu) / 1e6,
                    answer.body().length());
        }
    }

    private static String form(String name, String value) {
        return name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8);
    }

    private static Timed median(List<Timed> all) {
        return all.stream()
                .sorted(java.util.Comparator.comparing(Timed::ms))
                .toList()
                .get(all.size() / 2);
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("turnalike-pieces-page");
        for (String size :
                arguments.length == 0 ? new String[] {"100", "100", "1000", "2000", "4000", "10000"} : arguments) {
            int pieces = Integer.parseInt(size);
            try (Served served = Served.in(Files.createTempDirectory(folder, "one"))) {
                String page = "/jobs/" + served.demo().text() + "/pieces";
                String cells = form("sure", "yes") + "&" + form("cells", table(pieces));
                Timed paste = Timed.of(() -> served.post(page + "/table", cells));
                List<Timed> shown = new ArrayList<>();
                List<Timed> more = new ArrayList<>();
                for (int i = 0; i < ROUNDS; i++) {
                    String one = form("sure", "yes") + "&" + form("piece", "more " + i) + "&" + form("mass_g", "141");
                    shown.add(Timed.of(() -> served.get(page)));
                    more.add(Timed.of(() -> served.post(page, one)));
                }
                Timed get = median(shown);
                System.out.printf(
                        Locale.ROOT,
                        "%6d pieces, %d kB sent: paste %.0f ms (CPU %.0f), page %.0f ms (CPU %.0f, %d kB), one more %.0f ms (CPU %.0f)%n",
                        pieces,
                        cells.length() / 1000,
                        paste.ms(),
                        paste.cpuMs(),
                        get.ms(),
                        get.cpuMs(),
                        get.length() / 1000,
                        median(more).ms(),
                        median(more).cpuMs());
            }
        }
    }
}
