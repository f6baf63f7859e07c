package hotday.vehicle.cases;

import java.util.function.Supplier;

/**
 * What stands between controllers and vehicle.
 *
 * @param drive makes what is between controller and fan, a new one for every run
 */
public record Hardware(Sensing sensing, Supplier<FanDrive> drive) {
    private static final Supplier<FanDrive> DIRECT = () -> FanDrive.DIRECT;
    /** Nothing that errs. */
    public static final Hardware EXACT = new Hardware(Sensing.EXACT, DIRECT);
    /** Sensors as in most cars, a fan that follows any output. */
    public static final Hardware USUAL = new Hardware(Sensing.USUAL, DIRECT);

    /** Whether the fan follows any output. */
    public boolean direct() {
        return drive == DIRECT;
    }

    /** The same with another drive. */
    public Hardware with(Supplier<FanDrive> other) {
        return new Hardware(sensing, other);
    }
}
