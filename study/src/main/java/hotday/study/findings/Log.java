package hotday.study.findings;

import hotday.physics.refrigerant.PropertyTable;
import hotday.signals.channel.Recording;
import hotday.signals.channel.Sampling;
import hotday.study.prove.RunData;
import hotday.vehicle.plant.Input;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Arrays;

/** Signals on the grid of a prepared run: measured, or as a drawn car would have shown them. NaN throughout where there is none. */
final class Log {
    private static final double COLD = 15.0; // K over outside air

    private final RunData run;
    private final double[][] values;

    Log(RunData run) {
        this.run = run;
        this.values = new double[Signal.values().length][run.size()];
        for (double[] row : values) {
            Arrays.fill(row, Double.NaN);
        }
    }

    static Log measured(RunData run, Recording recording, VehicleSpec spec) {
        Log log = new Log(run);
        for (Signal signal : Signal.values()) {
            if (recording.has(signal.channel())) {
                double[] sampled = recording.sampled(signal.channel(), run.time(), Sampling.MEAN);
                System.arraycopy(sampled, 0, log.values[signal.ordinal()], 0, run.size());
            }
        }
        double[] liquid = log.of(Signal.SUBCOOLING);
        for (int i = 0; i < liquid.length; i++) {
            liquid[i] = saturation(spec, log.of(Signal.HEAD)[i]) - liquid[i];
        }
        return log;
    }

    /** Saturation temperature, K; NaN without air conditioning. */
    static double saturation(VehicleSpec spec, double pressure) {
        return spec.airConditioning()
                .map(a ->
                        PropertyTable.of(a.circuit().refrigerant()).saturation().temperature(Math.max(50e3, pressure)))
                .orElse(Double.NaN);
    }

    RunData run() {
        return run;
    }

    /** Started at about the temperature of the air: something in engine or gearbox reads so; one sensor may be wrong. */
    boolean coldStart() {
        double limit = run.input(0, Input.AMBIENT) + COLD;
        return run.startCoolant() < limit || of(Signal.OIL)[0] < limit || of(Signal.GEARBOX)[0] < limit;
    }

    double[] of(Signal signal) {
        return values[signal.ordinal()];
    }

    boolean has(Signal signal) {
        return !Double.isNaN(values[signal.ordinal()][0]);
    }
}
