package turnalike.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import turnalike.cli.about.LicencesCommand;
import turnalike.cli.boards.BoardsCommand;
import turnalike.cli.demo.DemoCommand;
import turnalike.cli.kit.FaultLog;
import turnalike.cli.kit.UserError;
import turnalike.cli.kit.WrongArguments;
import turnalike.cli.match.MatchCommand;
import turnalike.cli.page.DevicesCommand;
import turnalike.cli.page.PageServer;
import turnalike.cli.page.ServeCommand;
import turnalike.cli.pieces.BlanksCommand;
import turnalike.cli.pieces.ControlCommand;
import turnalike.cli.pieces.LikenessCommand;
import turnalike.cli.pieces.MendCommand;
import turnalike.cli.plan.ExportCommand;
import turnalike.cli.plan.NudgeCommand;
import turnalike.cli.plan.PlanCommand;
import turnalike.cli.price.PriceCommand;
import turnalike.cli.store.CheckCommand;
import turnalike.cli.store.GiveCommand;
import turnalike.cli.store.HistoryCommand;
import turnalike.cli.store.KeepCommand;
import turnalike.cli.store.LogCommand;
import turnalike.cli.store.MoveCommand;
import turnalike.cli.store.RedoCommand;
import turnalike.cli.store.UndoCommand;
import turnalike.cli.trace.TraceCommand;
import turnalike.language.Language;
import turnalike.language.Speech;
import turnalike.units.Problem;

/** The command line as a whole: which commands there are, and the one place where trouble becomes a line and an exit code. */
@Command(
        name = "turnalike",
        description = {
            "Matched sets of turned spindles: from the pattern to the placed set.",
            "",
            "First time? Run it without a command: it serves the page, with an invented demo job to look at beside an empty one.",
            "",
            "Rather on paper? Run @|bold turnalike demo|@: it makes every sheet of an invented job and says where each file is."
                    + " Then copy its job file, change it, and run @|bold turnalike plan|@ on it."
        },
        footer = {
            "",
            "Lengths in a job file: 22, 1.5, \"1 1/2\", \"1-1/2\", \"22 in\", \"1' 10\\\"\", \"38 mm\", \"3.8 cm\".",
            "Exit codes: 0 done, 2 something in the input to mend, 70 a fault of ours (a log file is named), 130 ended by Ctrl-C."
        },
        subcommands = {
            NewCommand.class,
            PlanCommand.class,
            NudgeCommand.class,
            ExportCommand.class,
            BoardsCommand.class,
            TraceCommand.class,
            BlanksCommand.class,
            PriceCommand.class,
            MatchCommand.class,
            ControlCommand.class,
            LikenessCommand.class,
            MendCommand.class,
            KeepCommand.class,
            LogCommand.class,
            UndoCommand.class,
            RedoCommand.class,
            HistoryCommand.class,
            GiveCommand.class,
            CheckCommand.class,
            MoveCommand.class,
            ServeCommand.class,
            DevicesCommand.class,
            DemoCommand.class,
            SchemaCommand.class,
            CompletionCommand.class,
            LicencesCommand.class,
            WarmUpCommand.class
        },
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class,
        synopsisSubcommandLabel = "COMMAND")
public final class Program implements Runnable, PageServer.Provider {
    private static final int INPUT_TO_MEND = 2;
    private static final int FAULT_OF_OURS = 70;

    @Option(
            names = "--every-problem",
            scope = ScopeType.INHERIT,
            description = "When the input has several problems, print them all, a line each, not only the first.")
    private boolean everyProblem;

    @Option(
            names = "--language",
            scope = ScopeType.INHERIT,
            paramLabel = "LANGUAGE",
            converter = SheetLanguage.class,
            defaultValue = "${env:TURNALIKE_LANGUAGE:-en}",
            description =
                    "The language of the sheets that are written and of what is wrong: en or de (default ${env:TURNALIKE_LANGUAGE:-en}, as"
                            + " TURNALIKE_LANGUAGE says); the other lines printed here stay English.")
    private Language language = Language.ENGLISH;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final PageServer serving;

    private Program(PageServer serving) {
        this.serving = serving;
    }

    @Override
    public PageServer serving() {
        return serving;
    }

    /** The version the jar was built with. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Program.class.getPackage().getImplementationVersion();
            return new String[] {"turnalike " + (version == null ? "(not packaged)" : version)};
        }
    }

    /** {@code de}: a language by its code. */
    static final class SheetLanguage implements CommandLine.ITypeConverter<Language> {
        @Override
        public Language convert(String code) {
            return Language.find(code)
                    .orElseThrow(() -> new CommandLine.TypeConversionException(
                            "'" + code + "' is no language of the sheets; give en or de"));
        }
    }

    /** Without a command: the page. */
    @Override
    public void run() {
        ServeCommand.open(spec);
    }

    /**
     * Runs one command and returns its exit code; nothing it does ends the process or prints a stack trace.
     *
     * @param serving the page, for the command that serves it
     */
    public static int run(List<String> arguments, PrintStream out, PrintStream err, PageServer serving) {
        Program program = new Program(serving);
        CommandLine line = new CommandLine(program)
                .setOut(new PrintWriter(out, true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(err, true, StandardCharsets.UTF_8))
                .setUsageHelpAutoWidth(true)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler((trouble, args) -> wrongArguments(trouble))
                .setExecutionExceptionHandler((trouble, command, parsed) -> program.tell(trouble, command));
        line.setExecutionStrategy(
                parsed -> Speech.in(program.language, () -> new CommandLine.RunLast().execute(parsed)));
        return line.execute(arguments.toArray(String[]::new));
    }

    private Problem said(Problem problem) {
        return new Problem(language.say(problem.where()), language.say(problem.what()), language.say(problem.mend()));
    }

    private static int wrongArguments(ParameterException trouble) {
        print(trouble.getCommandLine(), WrongArguments.told(trouble), 0);
        return INPUT_TO_MEND;
    }

    private int tell(Exception trouble, CommandLine command) {
        if (trouble instanceof UserError error) {
            List<Problem> told =
                    everyProblem ? error.problems() : error.problems().subList(0, 1);
            int untold = error.problems().size() - told.size();
            told.forEach(problem -> print(command, said(problem), untold));
            return INPUT_TO_MEND;
        }
        String log = FaultLog.write(trouble);
        print(
                command,
                new Problem("fault", "something went wrong that is not your doing", "please report it with " + log),
                0);
        return FAULT_OF_OURS;
    }

    private static void print(CommandLine command, Problem problem, int untold) {
        String more = untold == 0 ? "" : " (and %d more: --every-problem lists them)".formatted(untold);
        command.getErr().println("turnalike: " + problem.line().replaceAll("\\p{Cntrl}", " ") + more);
        command.getErr().flush();
    }
}
