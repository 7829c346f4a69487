package turnalike.cli.kit;

/** Checks of numbers given on the command line. */
public final class Arguments {
    private Arguments() {}

    /** A time that can be waited for. */
    public static double seconds(double seconds) {
        if (!(seconds >= 0 && seconds <= 86_400)) {
            throw UserError.of("--seconds", "was %s".formatted(seconds), "give a number from 0 to 86400");
        }
        return seconds;
    }
}
