package hotday.app.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** {@code hotday controller}: fan controller and compressor rules of a build. */
@Command(
        name = "controller",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        description = "fan controller and compressor rules of a build, for the controller in the car")
final class ControllerCommand implements Runnable {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(spec.commandLine(), "what with the controller? There is: export");
    }
}
