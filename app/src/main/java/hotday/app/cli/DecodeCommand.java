package hotday.app.cli;

import hotday.core.finding.InputException;
import hotday.signals.dbc.DbcFile;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code hotday decode}: what the description of a network says. */
@Command(
        name = "decode",
        mixinStandardHelpOptions = true,
        description = {
            "say what a network's description (DBC file) holds: messages, signals, units, words, and what is wrong with it",
            "Exit status 1: something in the file was not understood or contradicts itself; it is told with file:line:column."
        })
final class DecodeCommand implements Callable<Integer> {
    private final Console console;

    @Option(names = "--dbc", paramLabel = "FILE", required = true, description = "description of the network")
    private Path dbc;

    @Option(names = "--summary", required = true, description = "describe the file, message by message")
    @SuppressWarnings("UnusedVariable") // the only thing to do so far, yet it must be asked for
    private boolean summary;

    @Option(names = "--json", description = "for machines")
    private boolean json;

    DecodeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        return json ? forMachines() : forPeople();
    }

    private int forPeople() {
        DbcFile file = DbcFile.read(dbc);
        DecodeText.print(console, file);
        return status(file);
    }

    private int forMachines() {
        try {
            DbcFile file = DbcFile.read(dbc);
            DecodeJson.print(console, file);
            return status(file);
        } catch (InputException wrong) {
            DecodeJson.refused(console, wrong);
            return CommandLineDoor.WRONG_INPUT;
        }
    }

    private static int status(DbcFile file) {
        return file.hasFaults() ? CommandLineDoor.DOES_NOT_HOLD : CommandLineDoor.HOLDS;
    }
}
