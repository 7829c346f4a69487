package turnalike.cli.kit;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import turnalike.units.Problem;

/** Says what is wrong with a command line in the words of its user, not of the parser. */
public final class WrongArguments {
    private WrongArguments() {}

    public static Problem told(ParameterException trouble) {
        CommandLine command = trouble.getCommandLine();
        String help = "see '%s --help'".formatted(command.getCommandSpec().qualifiedName());
        if (trouble instanceof UnmatchedArgumentException unmatched) {
            String typed = unmatched.getUnmatched().get(0);
            List<String> near = unmatched.getSuggestions().stream()
                    .filter(each -> initial(each).equals(initial(typed)))
                    .toList();
            String mend = near.isEmpty() ? help : "is it %s? else %s".formatted(String.join(" or ", near), help);
            return new Problem("command line", unknown(typed, command), mend);
        }
        String what = String.valueOf(trouble.getMessage()).lines().findFirst().orElse("wrong arguments");
        return new Problem("command line", what.replaceAll("is not an? (double|int|long)$", "is not a number"), help);
    }

    /** The first letter is seldom mistyped; without it, "devices" was offered for "frobnicate". */
    private static String initial(String argument) {
        String bare = argument.replaceFirst("^-+", "");
        return bare.isEmpty() ? "" : bare.substring(0, 1);
    }

    private static String unknown(String argument, CommandLine command) {
        if (argument.startsWith("-")) {
            return "there is no option '%s'".formatted(argument);
        }
        return command.getParent() == null
                ? "there is no command '%s'".formatted(argument)
                : "'%s' is one argument too many".formatted(argument);
    }
}
