package hotday.vehicle.cases;

/** What stands between the output of the fan controller and the fan: nothing, a duty cycle, relays. May remember; for one run. */
public interface FanDrive {
    /** Passes on what comes. */
    FanDrive DIRECT = output -> output;

    /**
     * Called once a tick.
     *
     * @param output of the controller, 0..1
     * @return what the fan is asked for, 0..1
     */
    double of(double output);
}
