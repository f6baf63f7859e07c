package hotday.study.wiring;

import hotday.physics.component.FanDrive;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.Wiring;

/**
 * The fan's circuit at full speed on the hottest day.
 *
 * @param supply voltage of the bus, V
 * @param current A
 * @param feedTemperature, backTemperature of the copper, K; the same without a cable back
 * @param feedDrop, groundDrop V
 * @param ampacity of the thinner cable, A
 */
public record FanLoop(
        double supply,
        double current,
        double feedTemperature,
        double backTemperature,
        double feedDrop,
        double groundDrop,
        double ampacity) {
    private static final int ROUNDS = 20;

    /** V lost on both ways. */
    public double drop() {
        return feedDrop + groundDrop;
    }

    /** Of the supply. */
    public double share() {
        return drop() / supply;
    }

    /** At the regulated voltage; current and warmth of the copper agree. */
    static FanLoop of(VehicleSpec spec, Wiring wiring) {
        VehicleSpec.Electrical e = spec.electrical();
        FanLoop loop = at(wiring, e.regulated(), 0.0);
        for (int i = 0; i < ROUNDS; i++) {
            double cable = loop.current() > 0.0 ? loop.drop() / loop.current() : e.fanCableResistance();
            FanDrive drive = e.drive(spec.fan(), cable);
            double power = drive.commandedPower(1.0);
            loop = at(wiring, e.regulated(), drive.current(drive.terminalVoltage(e.regulated(), power), power));
        }
        return loop;
    }

    /** At a given current, A. */
    static FanLoop at(Wiring w, double supply, double current) {
        double feedAmpacity = ampacity(w, w.feed());
        double feed = temperature(w, w.feed(), current);
        double back = w.back().map(b -> temperature(w, b, current)).orElse(feed);
        double ground =
                w.groundResistance() + w.back().map(b -> b.resistance(back)).orElse(0.0);
        double thinner =
                Math.min(feedAmpacity, w.back().map(b -> ampacity(w, b)).orElse(feedAmpacity));
        return new FanLoop(supply, current, feed, back, current * w.feed().resistance(feed), current * ground, thinner);
    }

    private static double ampacity(Wiring w, Wiring.Run run) {
        return run.conductor().ampacity(w.insulation(), w.surroundings(), w.bundled());
    }

    /** Not above what its insulation stands: there it is judged, beyond it would burn. */
    private static double temperature(Wiring w, Wiring.Run run, double current) {
        return Math.min(
                w.insulation(), run.conductor().temperature(current, w.insulation(), w.surroundings(), w.bundled()));
    }
}
