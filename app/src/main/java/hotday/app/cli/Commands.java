package hotday.app.cli;

import picocli.CommandLine;

/** Makes the commands by hand: what each needs is passed in, nothing is looked up. */
final class Commands {
    private Commands() {}

    static void register(CommandLine line, Console console) {
        line.addSubcommand(new NewCommand(console));
        line.addSubcommand(new CheckCommand(console));
        line.addSubcommand(new PredictCommand(console));
        line.addSubcommand(new ProveCommand(console));
        line.addSubcommand(new PropertyCommand(console));
        line.addSubcommand(new DecodeCommand(console));
        line.addSubcommand(new CommandLine(new GatewayCommand()).addSubcommand(new GatewayCheckCommand(console)));
        line.addSubcommand(new CoverageCommand(console));
        line.addSubcommand(new FaultsCommand(console));
        line.addSubcommand(new ServeCommand(console));
        line.addSubcommand(new DemoCommand(console));
    }
}
