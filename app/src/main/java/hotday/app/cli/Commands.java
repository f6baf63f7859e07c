package hotday.app.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine;

/**
 * Makes the commands by hand: what each needs is passed in, nothing is looked up. Only the one that is called is made, where one is: making
 * them all takes longer than most of them run.
 */
final class Commands {
    private final Map<String, Supplier<CommandLine>> makers = new LinkedHashMap<>();

    Commands(Console console) {
        makers.put("new", () -> new CommandLine(new NewCommand(console)));
        makers.put("check", () -> new CommandLine(new CheckCommand(console)));
        makers.put("predict", () -> new CommandLine(new PredictCommand(console)));
        makers.put("wiring", () -> new CommandLine(new WiringCommand(console)));
        makers.put("idle", () -> new CommandLine(new IdleCommand(console)));
        makers.put("prove", () -> new CommandLine(new ProveCommand(console)));
        makers.put("schedule", () -> new CommandLine(new ScheduleCommand(console)));
        makers.put("property", () -> new CommandLine(new PropertyCommand(console)));
        makers.put("decode", () -> new CommandLine(new DecodeCommand(console)));
        makers.put(
                "gateway",
                () -> new CommandLine(new GatewayCommand())
                        .addSubcommand(new GatewayCheckCommand(console))
                        .addSubcommand(new GatewayReplayCommand(console))
                        .addSubcommand(new GatewayExportCommand(console)));
        makers.put(
                "controller",
                () -> new CommandLine(new ControllerCommand()).addSubcommand(new ControllerExportCommand(console)));
        makers.put("coverage", () -> new CommandLine(new CoverageCommand(console)));
        makers.put("faults", () -> new CommandLine(new FaultsCommand(console)));
        makers.put("serve", () -> new CommandLine(new ServeCommand(console)));
        makers.put("demo", () -> new CommandLine(new DemoCommand(console)));
    }

    /** Adds the command that these words call, or all of them when they call none. */
    void register(CommandLine line, String... words) {
        Optional<String> called =
                Arrays.stream(words).filter(word -> !word.startsWith("-")).findFirst();
        if (called.isPresent() && makers.containsKey(called.get())) {
            line.addSubcommand(called.get(), makers.get(called.get()).get());
        } else {
            makers.forEach((name, maker) -> line.addSubcommand(name, maker.get()));
        }
    }
}
