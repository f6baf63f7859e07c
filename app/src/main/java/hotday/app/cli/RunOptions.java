package hotday.app.cli;

import hotday.core.finding.InputException;
import hotday.signals.channel.ChannelMap;
import hotday.study.prove.KnownVehicle;
import hotday.study.prove.ProveRequest;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Recorded runs that a vehicle is fitted to before something is asked of it. */
final class RunOptions {
    @Option(
            names = "--fit",
            paramLabel = "RUN",
            description = "recorded run to fit the vehicle to first (repeatable), as 'hotday prove' does")
    private List<Path> runs = List.of();

    @Option(names = "--map", paramLabel = "FILE", description = "channel map (channels.yaml) of these runs")
    private Optional<Path> map = Optional.empty();

    /** Runs and map go together. */
    void check(TypedOptions typed) {
        if (!runs.isEmpty() && map.isEmpty()) {
            typed.fault("--map", "option-missing", "a recorded run needs its channel map: --map channels.yaml");
        }
        if (runs.isEmpty() && map.isPresent()) {
            typed.fault("--fit", "option-missing", "a channel map alone shows nothing: name a recorded run with --fit");
        }
    }

    /** The vehicle as the sheet and the runs have it. */
    KnownVehicle vehicle(VehicleSpec spec, long seed, Console console) {
        if (runs.isEmpty()) {
            return KnownVehicle.ofSheet(spec);
        }
        ChannelMap channels = ChannelMap.read(map.orElseThrow());
        return KnownVehicle.ofRuns(new ProveRequest(
                spec,
                List.of(),
                InputException.each(runs, channels::recording),
                List.of(),
                false,
                seed,
                Runtime.getRuntime().availableProcessors(),
                console::progress,
                () -> false));
    }
}
