package turnalike.solid;

import java.util.Collection;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import turnalike.pattern.Pattern;
import turnalike.pattern.Samples;
import turnalike.units.Density;

/** The solid of a 40-member pattern in closed form, beside adaptive quadrature (Hipparchus) at 1e-10 of the same figures. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SolidBench {
    private final Pattern pattern = Samples.pattern(40, new Random(40));
    private final Density density = Density.ofKgPerM3(640);

    @Benchmark
    public double closedForm() {
        Solid solid = Solid.of(pattern.outline(), density);
        return solid.volumeMm3() + solid.balance().mm() + solid.spinInertiaGMm2() + solid.swingInertiaGMm2();
    }

    @Benchmark
    public double quadrature() {
        Quadrature by = new Quadrature(pattern, 1e-10);
        return by.volume() + by.balance() + by.spin() + by.swing();
    }

    public static void main(String[] arguments) throws RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(SolidBench.class.getName() + "\\.")
                        .forks(1)
                        .warmupIterations(3)
                        .warmupTime(TimeValue.seconds(1))
                        .measurementIterations(5)
                        .measurementTime(TimeValue.seconds(1))
                        .build())
                .run();
        double closed = 0;
        double adaptive = 0;
        for (RunResult result : results) {
            double score = result.getPrimaryResult().getScore();
            if (result.getPrimaryResult().getLabel().equals("closedForm")) {
                closed = score;
            } else {
                adaptive = score;
            }
        }
        System.out.printf(
                Locale.ROOT,
                "closed form %.1f us, adaptive quadrature at 1e-10 %.1f us: closed form is %.0f times as fast%n",
                closed,
                adaptive,
                adaptive / closed);
    }
}
