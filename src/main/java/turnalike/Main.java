package turnalike;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import turnalike.cli.Program;

/** The program's entrance. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        // Figures must not change their decimal sign or digits with the machine's language, nor text its bytes with its
        // code page.
        Locale.setDefault(Locale.ROOT);
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        int code = Program.run(List.of(arguments), out, err);
        out.flush();
        System.exit(code);
    }
}
