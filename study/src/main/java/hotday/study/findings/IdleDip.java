package hotday.study.findings;

import hotday.vehicle.idle.FeedForward;
import hotday.vehicle.idle.IdleLoad;
import hotday.vehicle.idle.IdleRun;
import hotday.vehicle.idle.IdleSettings;
import hotday.vehicle.idle.IdleStudy;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Run;

/** What the idle speed does when the compressor's clutch comes in at rest. */
final class IdleDip {
    /** A clutch takes this long, s; common practice, no source. */
    private static final double CLUTCH = 0.04;
    /** The torque is known this long after the clutch came in, s. */
    private static final double KNOWN_AFTER = 0.3;

    private final Car car;
    private IdleRun.Trace trace;
    private double set;
    private double elapsed = Double.NaN; // s since the clutch came in
    private boolean engaged;

    IdleDip(Car car) {
        this.car = car;
    }

    /** Follows a run before each of its steps of {@code step} s. */
    void tick(Run run, double step) {
        boolean now = run.get(Input.COMPRESSOR) > 0.5;
        boolean idling = run.get(Input.ENGINE_SPEED) > 0.0 && run.get(Input.SPEED) < 0.1;
        if (now && !engaged && idling) {
            elapsed = 0.0;
            trace = null;
        } else {
            elapsed = run.get(Input.ENGINE_SPEED) > 0.0 || trace != null ? elapsed + step : Double.NaN;
        }
        if (trace == null && elapsed >= KNOWN_AFTER) {
            IdleRun dip = of(run.get(Input.ENGINE_SPEED), run.get(Output.COMPRESSOR_POWER));
            trace = dip.trace();
            set = dip.set();
        }
        engaged = now;
    }

    private IdleRun of(double speed, double power) {
        Parts p = car.parts();
        IdleSettings s = IdleSettings.of(car.spec().engine().displacement(), speed);
        IdleSettings own = new IdleSettings(
                p.inertia * s.inertia(),
                s.speed(),
                s.drag(),
                s.airLag(),
                s.proportional(),
                s.integral(),
                s.spark(),
                p.reserve * s.reserveUp(),
                s.reserveDown());
        double torque = power / speed;
        return IdleStudy.run(own, new IdleLoad(torque, CLUTCH), new FeedForward(p.announced * torque, p.lead));
    }

    /** Engine speed now, less the set one, rad/s. */
    double below() {
        if (trace == null || Double.isNaN(elapsed)) {
            return 0.0;
        }
        int at = (int) Math.round((IdleStudy.ENGAGED + elapsed - KNOWN_AFTER) / IdleStudy.STEP);
        return at < trace.size() ? trace.speed(at) - set : 0.0;
    }
}
