package turnalike.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The inputs kept for {@code ./campaign fuzz}, once through each harness. An input that broke something joins its folder and stays. */
class FuzzCorpusTest {
    private static final Path KEPT = Path.of("src/test/resources/turnalike/fuzz");

    private static Arguments harness(String folder, Consumer<byte[]> harness) {
        return Arguments.of(folder, harness);
    }

    static Stream<Arguments> harnesses() {
        return Stream.of(
                harness("length", LengthFuzz::fuzzerTestOneInput),
                harness("job", JobFuzz::fuzzerTestOneInput),
                harness("pieces", PiecesFuzz::fuzzerTestOneInput),
                harness("kept", KeptFuzz::fuzzerTestOneInput),
                harness("points", PointsFuzz::fuzzerTestOneInput),
                harness("svg", SvgFuzz::fuzzerTestOneInput),
                harness("dxf", DxfFuzz::fuzzerTestOneInput),
                harness("photo", PhotoFuzz::fuzzerTestOneInput),
                harness("form", FormFuzz::fuzzerTestOneInput));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("harnesses")
    void every_kept_input_is_answered(String folder, Consumer<byte[]> harness) throws IOException {
        List<Path> inputs = new ArrayList<>();
        try (Stream<Path> files = Files.list(KEPT.resolve(folder))) {
            files.sorted().forEach(inputs::add);
        }
        assertThat(inputs).hasSizeGreaterThan(3);
        for (Path input : inputs) {
            byte[] bytes = Files.readAllBytes(input);
            try {
                harness.accept(bytes);
            } catch (RuntimeException fault) {
                throw new AssertionError(input.toString(), fault);
            }
        }
    }
}
