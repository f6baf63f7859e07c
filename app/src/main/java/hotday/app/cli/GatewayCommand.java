package hotday.app.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** {@code hotday gateway}: the translation between two networks. */
@Command(
        name = "gateway",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        description =
                "the translation between two vehicle networks: check it before it is flashed, run recordings through it, write it as C")
final class GatewayCommand implements Runnable {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(
                spec.commandLine(), "what with the gateway? There are: check, replay, export");
    }
}
