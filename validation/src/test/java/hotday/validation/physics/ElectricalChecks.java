package hotday.validation.physics;

import hotday.physics.component.Alternator;
import hotday.physics.component.Cable;
import hotday.physics.component.FanDrive;
import hotday.validation.Check;
import hotday.validation.Topic;
import hotday.vehicle.idle.FeedForward;
import hotday.vehicle.idle.IdleLoad;
import hotday.vehicle.idle.IdleRun;
import hotday.vehicle.idle.IdleSettings;
import hotday.vehicle.idle.IdleStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Cables, the fan's current, the alternator's torque and the idle speed under them. */
public final class ElectricalChecks implements Topic {
    private static final double RPM = Math.PI / 30.0;
    private static final String CABLE = "IEC 60228, class 5, with copper's 0.393 %/K; recomputed";
    private static final String POWER = "P = V I; recomputed";
    private static final String TRADE = "common practice, no source";

    @Override
    public String title() {
        return "Electrical supply and idle";
    }

    @Override
    public List<Check> checks() {
        List<Check> out = new ArrayList<>();
        double warm = 1e3 * Cable.ofCopper(6e-6, 1).resistance(333.15);
        out.add(Check.near("cable 6 mm2 at 60 degC", warm, 3.819, 0.0005, "mOhm/m", CABLE));
        out.add(drop(10, 45, 20, 0.430));
        out.add(drop(10, 45, 80, 0.531));
        out.add(drop(16, 45, 60, 0.315));
        out.add(drop(6, 50, 60, 0.955));
        out.add(fan(12.0, 50.0));
        out.add(fan(13.5, 44.4));
        out.add(fan(14.2, 42.3));
        Alternator alternator = new Alternator(new double[] {130}, new double[] {60}, 0.0025, 2.9, 0.55);
        double torque = alternator.crankTorque(13.5, 60, 700 * RPM);
        String step = "I V / (0.55 w); recomputed";
        out.add(Check.near("alternator, 60 A at 700 rpm: at the crank", torque, 20.1, 0.05, "N m", step));
        clutch(out);
        return out;
    }

    private static Check drop(double squareMillimetres, double current, double celsius, double published) {
        double volts = Cable.ofCopper(squareMillimetres * 1e-6, 5).drop(current, celsius + 273.15);
        String what = String.format(
                Locale.ROOT, "%.0f A, 5 m loop of %.0f mm2 at %.0f degC", current, squareMillimetres, celsius);
        return Check.near(what, volts, published, 0.0006, "V", CABLE);
    }

    private static Check fan(double volts, double published) {
        FanDrive fan = new FanDrive(600, 0, 100, 9, 10.5, 0);
        double current = fan.current(fan.terminalVoltage(volts, 600), 600);
        return Check.near("fan of 600 W at " + volts + " V", current, published, 0.051, "A", POWER);
    }

    private static void clutch(List<Check> out) {
        IdleSettings engine = IdleSettings.of(4.8e-3, 700 * RPM);
        IdleLoad clutch = new IdleLoad(20, 0.04);
        IdleRun announced = IdleStudy.run(engine, clutch, new FeedForward(20, 0.3));
        IdleRun unannounced = IdleStudy.run(engine, clutch, FeedForward.NONE);
        out.add(Check.inside("clutch at idle, announced: sag", announced.sag() / RPM, 0, 30, "rpm", TRADE));
        out.add(Check.inside(
                "clutch at idle, unannounced: sag",
                unannounced.sag() / RPM,
                75,
                Double.POSITIVE_INFINITY,
                "rpm",
                TRADE));
    }
}
