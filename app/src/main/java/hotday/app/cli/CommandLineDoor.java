package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * Runs one command and turns what happened into an exit status: 0 done and holds, 1 done and something does not hold, 2
 * the input is wrong (nothing was written), 3 our own fault.
 */
public final class CommandLineDoor {
    static final int HOLDS = 0;
    static final int DOES_NOT_HOLD = 1;
    static final int WRONG_INPUT = 2;
    static final int OUR_FAULT = 3;

    private CommandLineDoor() {}

    /** The program without its commands. */
    @Command(
            name = "hotday",
            mixinStandardHelpOptions = true,
            versionProvider = Version.class,
            synopsisSubcommandLabel = "COMMAND",
            description = {
                "Will this conversion stay cool on the worst day it will ever see?",
                "Predicts before metal is cut, fits what a mild day showed, and says with an interval what the hot day brings."
            },
            footer = {
                "",
                "Exit status: 0 done and holds, 1 something does not hold, 2 the input is wrong, 3 our own fault.",
                "The launcher also knows: hotday build, hotday test [quick], hotday bench."
            })
    static final class Root implements Runnable {
        @CommandLine.Spec
        private CommandLine.Model.CommandSpec spec;

        @Option(
                names = "--debug",
                description = "show where a fault of our own came from",
                scope = CommandLine.ScopeType.INHERIT)
        private boolean debug;

        boolean debug() {
            return debug;
        }

        @Override
        public void run() {
            spec.commandLine().usage(spec.commandLine().getOut());
        }
    }

    /** Runs the words of one command line; never throws. */
    public static int run(String[] args, PrintStream out, PrintStream err) {
        Root root = new Root();
        try {
            int status = line(root, out, err, args).execute(args);
            if (out.checkError() && status < WRONG_INPUT) {
                err.println("hotday: standard output could not be written (disk full, or closed by the reader)");
                return WRONG_INPUT;
            }
            return status;
        } catch (Exception | StackOverflowError | OutOfMemoryError e) {
            return ourFault(e, root, err);
        }
    }

    private static CommandLine line(Root root, PrintStream out, PrintStream err, String... words) {
        CommandLine line = new CommandLine(root);
        new Commands(new Console(out, err, Boolean.getBoolean("hotday.terminal"))).register(line, words);
        return line.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(err, true, StandardCharsets.UTF_8))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler((e, given) -> wrongWords(e, err))
                .setExecutionExceptionHandler((e, command, result) -> failed(e, root, err));
    }

    private static int wrongWords(CommandLine.ParameterException e, PrintStream err) {
        err.println("hotday: " + e.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(e, new PrintWriter(err, true, StandardCharsets.UTF_8));
        err.println("'" + e.getCommandLine().getCommandSpec().qualifiedName() + " --help' lists what can be given.");
        return WRONG_INPUT;
    }

    private static int failed(Exception e, Root root, PrintStream err) {
        if (e instanceof InputException wrong) {
            for (Finding finding : wrong.findings()) {
                err.println(finding.place().isPresent() ? finding.toString() : "hotday: " + finding);
            }
            return WRONG_INPUT;
        }
        return ourFault(e, root, err);
    }

    private static int ourFault(Throwable e, Root root, PrintStream err) {
        err.println("hotday: a fault of our own (" + e + "). Nothing of yours is wrong; run again with --debug and"
                + " send us what it prints.");
        if (root.debug()) {
            e.printStackTrace(err);
        }
        return OUR_FAULT;
    }
}
