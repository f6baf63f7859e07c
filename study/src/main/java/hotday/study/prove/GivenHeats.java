package hotday.study.prove;

import hotday.physics.fluid.MoistAir;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;

/**
 * Heats of condenser and gearbox coolers during a recorded run, which nobody records: the whole vehicle is driven once over the recorded
 * speeds, fuel and switches, and what its coolers give is laid beside the recording. The fit then moves the engine side alone and doubts
 * these heats by a multiplier each.
 */
final class GivenHeats {
    private static final double TICK = 0.1; // s
    /** Nobody records these: half-clouded sky, medium air, the blower on high as air conditioning is tested; common practice, no source. */
    private static final double SUN = 400.0; // W/m2

    private static final double HUMIDITY = 0.5;
    private static final double BLOWER = 1.0;

    private final Run run;
    private final double[] inputs;
    private final double step;
    private final boolean engagedThroughout;
    private final boolean scheduled;

    /**
     * @param inputs table of the run's inputs, {@link Input#COUNT} values a row, whose columns of given heats are filled
     * @param step s
     * @param engagedThroughout nobody recorded the compressor: heats as if it ran with the engine, for who takes it to be on
     * @param scheduled nobody recorded the fan, its schedule drives it
     */
    GivenHeats(Plant plant, double[] inputs, double step, boolean engagedThroughout, boolean scheduled) {
        this.run = new Run(plant);
        this.inputs = inputs;
        this.step = step;
        this.engagedThroughout = engagedThroughout && plant.conditioned();
        this.scheduled = scheduled;
    }

    void fill(double startCoolant) {
        double ambient = inputs[Input.AMBIENT.index()];
        run.start(run.plant().soaked(ambient), 0.0);
        run.warm(startCoolant);
        for (int at = 0; at < inputs.length; at += Input.COUNT) {
            row(at);
        }
    }

    private void row(int at) {
        run.setInputs(inputs, at);
        boolean turns = run.get(Input.ENGINE_SPEED) > 0.0;
        if (engagedThroughout) {
            run.set(Input.COMPRESSOR, turns ? 1.0 : 0.0);
            run.set(Input.FAN_DEMAND, Math.max(run.get(Input.FAN_DEMAND), turns ? Branch.FAN_WITH_COMPRESSOR : 0.0));
        }
        run.set(Input.FAN_BY_SCHEDULE, scheduled ? 1.0 : 0.0);
        run.set(Input.BLOWER, run.get(Input.COMPRESSOR) > 0.0 || run.get(Input.HEATER) > 0.0 ? BLOWER : 0.0);
        run.set(Input.SUN, SUN);
        run.set(Input.HUMIDITY, MoistAir.humidityRatio(run.get(Input.AMBIENT), HUMIDITY, run.get(Input.PRESSURE)));
        long ticks = Math.max(1, Math.round(step / TICK));
        double condenser = 0.0;
        double air = 0.0;
        double tank = 0.0;
        for (int i = 0; i < ticks; i++) {
            run.advance(step / ticks);
            condenser += run.get(Output.CONDENSER_HEAT) / ticks;
            air += run.get(Output.GEARBOX_AIR_HEAT) / ticks;
            tank += run.get(Output.GEARBOX_TANK_HEAT) / ticks;
        }
        inputs[at + Input.CONDENSER_HEAT.index()] = condenser;
        inputs[at + Input.GEARBOX_HEAT.index()] = air;
        inputs[at + Input.GEARBOX_TANK_HEAT.index()] = tank;
    }
}
