package hotday.study.design;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Case.Conditioning;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import java.util.EnumMap;
import java.util.Map;

/**
 * A vehicle at rest in one case.
 *
 * @param asked fan asked for, 0..1
 * @param fan its speed, 0..1; less where supply or current do not carry it
 * @param fanPower electrical, W
 * @param compressorPower shaft, W
 * @param coolant mean, K
 * @param battery current out of it, A
 * @param coolantRead 0.1 degC
 * @param gearboxRead 0.1 degC
 * @param headRead kPa absolute
 * @param chargeRead 0.1 degC
 * @param speedRead 0.1 km/h
 * @param conditioned compressor asked for
 * @param headroom how far each judged limit is from giving way, SI
 */
record Calm(
        double asked,
        double fan,
        double fanPower,
        double compressorPower,
        double coolant,
        double battery,
        double coolantRead,
        double gearboxRead,
        double headRead,
        double chargeRead,
        double speedRead,
        boolean conditioned,
        Map<Limit, Double> headroom) {
    private static final double ZERO_CELSIUS = 273.15;

    /** Nothing known. */
    static final Calm NONE = new Calm(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, false, Map.of());

    /** A trial that has just settled. */
    static Calm of(Trial trial, Case kase, double asked) {
        Run run = trial.run();
        Map<Limit, Double> headroom = new EnumMap<>(Limit.class);
        for (Limit limit : Limit.values()) {
            if (trial.judges(limit)) {
                headroom.put(limit, trial.headroom(limit));
            }
        }
        boolean conditioned = run.plant().conditioned();
        return new Calm(
                asked,
                run.get(State.FAN),
                run.get(Output.FAN_CURRENT) * run.get(Output.BUS),
                run.get(Output.COMPRESSOR_POWER),
                run.get(State.JACKET),
                run.get(Output.BATTERY_CURRENT),
                10 * (run.coolantReading() - ZERO_CELSIUS),
                10 * (run.get(State.SUMP) - ZERO_CELSIUS),
                conditioned ? run.get(Output.HEAD_PRESSURE) / 1000 : 0.0,
                10 * (run.get(Output.CHARGE_TEMPERATURE) - ZERO_CELSIUS),
                36 * Math.abs(run.get(Input.SPEED)),
                conditioned && kase.first().conditioning() != Conditioning.OFF,
                headroom);
    }

    /** A part of the way from one to another, straight; power by the cube of the speed, as a fan takes it. */
    static Calm between(Calm a, Calm b, double share) {
        double fan = mix(a.fan, b.fan, share);
        double cubes = cube(b.fan) - cube(a.fan);
        double ofPower = cubes == 0.0 ? share : (cube(fan) - cube(a.fan)) / cubes;
        Map<Limit, Double> headroom = new EnumMap<>(Limit.class);
        a.headroom.forEach((limit, room) -> headroom.put(limit, mix(room, b.headroom.get(limit), share)));
        return new Calm(
                mix(a.asked, b.asked, share),
                fan,
                mix(a.fanPower, b.fanPower, ofPower),
                mix(a.compressorPower, b.compressorPower, share),
                mix(a.coolant, b.coolant, share),
                mix(a.battery, b.battery, share),
                mix(a.coolantRead, b.coolantRead, share),
                mix(a.gearboxRead, b.gearboxRead, share),
                mix(a.headRead, b.headRead, share),
                mix(a.chargeRead, b.chargeRead, share),
                a.speedRead,
                a.conditioned,
                headroom);
    }

    /** As heard, see {@link Passage}. */
    double loudness() {
        return fan * Math.sqrt(fan);
    }

    private static double cube(double x) {
        return x * x * x;
    }

    private static double mix(double a, double b, double share) {
        return a + share * (b - a);
    }
}
