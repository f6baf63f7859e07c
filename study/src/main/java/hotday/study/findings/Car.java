package hotday.study.findings;

import hotday.physics.cycle.Charge;
import hotday.study.prove.HiddenVehicle;
import hotday.vehicle.plant.Coefficient;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import org.hipparchus.random.Well19937c;

/**
 * A car as it may truly be: drawn from the doubt about a sheet, sound or with one fault. The same draws make the virtual cars that are
 * commissioned and, with other seeds, what a recording is laid beside.
 */
final class Car {
    // what a sheet leaves open beside the unknowns of the fit; standard deviations, common practice, no source
    private static final double ALTERNATOR = 0.06;
    private static final double REGULATED = 0.12; // V
    private static final double BASE_LOAD = 0.12;
    private static final double RESISTANCE = 0.2;
    private static final double FAN_POWER = 0.08;
    private static final double BYPASS = 3.0; // K
    private static final double COOLER = 0.15;
    private static final double SPIN = 0.2;
    private static final double CASE_LOSS = 0.3;
    private static final double SUPERHEAT = 1.5; // K
    private static final double FREEZE_LIMIT = 0.7; // K
    private static final double EVAPORATOR = 0.12;
    private static final double REST = 3.0; // K, mean
    private static final double MOST_REST = 12.0; // K
    private static final double SENSOR = 0.8; // K
    private static final double HIGH_SENSOR = 15e3; // Pa
    private static final double LOW_SENSOR = 6e3; // Pa
    private static final double CURRENT_SENSOR = 0.04;

    private final VehicleSpec spec;
    private final Plant plant;
    private final Parts parts;

    private Car(VehicleSpec spec, Plant plant, Parts parts) {
        this.spec = spec;
        this.plant = plant;
        this.parts = parts;
    }

    /**
     * @param seed of everything that differs from the sheet
     * @param size of the fault, 0 small to 1 large; of no matter without one
     * @param share of the doubt about the sheet that is drawn from, 0..1
     */
    static Car draw(VehicleSpec sheet, FaultKind fault, double size, double share, long seed) {
        return draw(compiled(sheet, fault, size, seed), fault, size, share, seed);
    }

    /** A sheet with what a plant cannot be given later, compiled. */
    record Compiled(VehicleSpec spec, Plant plant) {}

    static Compiled compiled(VehicleSpec sheet, FaultKind fault, double size, long seed) {
        return compiled(varied(sheet, new Well19937c(seed)), fault, size);
    }

    private static Compiled compiled(VehicleSpec varied, FaultKind fault, double size) {
        VehicleSpec own = fault.sheet(varied, size);
        return new Compiled(own, Plant.compile(own));
    }

    /** A sound sheet with a fault put in; itself when the fault does not touch it. */
    static Compiled compiled(Compiled sound, FaultKind fault, double size) {
        return fault.sheet(sound.spec(), size) == sound.spec() ? sound : compiled(sound.spec(), fault, size);
    }

    /** The same draws without compiling again: for faults that leave the sheet alone. */
    static Car draw(Compiled compiled, FaultKind fault, double size, double share, long seed) {
        Plant drawn = HiddenVehicle.draw(compiled.plant(), seed + 1, share);
        Parts parts = parts(new Well19937c(seed + 2));
        double[] k = drawn.coefficients();
        k[Coefficient.COOLANT_SENSOR_OFFSET.index()] = parts.coolantOffset;
        fault.plant(k, size);
        fault.parts(parts, size);
        return new Car(compiled.spec(), drawn.with(k), parts);
    }

    private static VehicleSpec varied(VehicleSpec sheet, Well19937c random) {
        VehicleSpec s = Sheets.electrical(
                sheet,
                level(random, ALTERNATOR),
                REGULATED * random.nextGaussian(),
                level(random, BASE_LOAD),
                level(random, RESISTANCE));
        s = Sheets.fanPower(s, level(random, FAN_POWER));
        s = Sheets.gearbox(
                s,
                1.0,
                BYPASS * random.nextGaussian(),
                level(random, COOLER),
                level(random, SPIN),
                level(random, CASE_LOSS));
        return Sheets.circuit(
                s,
                s.airConditioning().map(a -> a.circuit().charge()).orElse(Charge.RIGHT),
                Math.max(-3.0, SUPERHEAT * random.nextGaussian()),
                FREEZE_LIMIT * random.nextGaussian(),
                level(random, EVAPORATOR));
    }

    private static double level(Well19937c random, double width) {
        return Math.exp(width * random.nextGaussian());
    }

    private static Parts parts(Well19937c random) {
        Parts p = new Parts();
        p.coolantOffset = SENSOR * random.nextGaussian();
        p.oilOffset = SENSOR * random.nextGaussian();
        p.gearboxOffset = SENSOR * random.nextGaussian();
        p.ventOffset = SENSOR * random.nextGaussian();
        p.liquidOffset = SENSOR * random.nextGaussian();
        p.headOffset = HIGH_SENSOR * random.nextGaussian();
        p.suctionOffset = LOW_SENSOR * random.nextGaussian();
        p.currentLevel = level(random, CURRENT_SENSOR);
        p.announced = 0.75 + 0.3 * random.nextDouble();
        p.lead = 0.1 + 0.2 * random.nextDouble();
        p.reserve = level(random, 0.15);
        p.inertia = level(random, 0.12);
        p.rest = Math.min(MOST_REST, -REST * Math.log1p(-random.nextDouble()));
        p.sun = 150.0 + 650.0 * random.nextDouble();
        p.humidity = 0.25 + 0.45 * random.nextDouble();
        return p;
    }

    VehicleSpec spec() {
        return spec;
    }

    Plant plant() {
        return plant;
    }

    Parts parts() {
        return parts;
    }
}
