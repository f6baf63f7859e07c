package hotday.vehicle.controller;

/** Checks of calibration numbers; the message names the number, its value and its limits. */
final class Bounds {
    private Bounds() {}

    static int inside(String name, int value, int low, int high) {
        if (value < low || value > high) {
            throw new IllegalArgumentException(name + " is " + value + ", must be " + low + ".." + high);
        }
        return value;
    }
}
