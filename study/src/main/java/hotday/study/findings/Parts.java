package hotday.study.findings;

/**
 * What a plant does not hold: sensors, what the fan makes of its command, the idle governor, and the day. A healthy car's come from
 * {@link Car}; a fault changes some.
 */
final class Parts {
    /** Fan speed that comes of a command. */
    enum FanHabit {
        AS_TOLD,
        DEAD,
        ONE_SPEED
    }

    /** Reading less truth, K. */
    double coolantOffset;

    double oilOffset;
    double gearboxOffset;
    double ventOffset;
    double liquidOffset;
    /** Reading less truth, Pa. */
    double headOffset;

    double suctionOffset;
    /** Reading over truth. */
    double currentLevel = 1.0;

    FanHabit fan = FanHabit.AS_TOLD;
    /** Speed of a fan that knows one only, 0..1. */
    double oneSpeed;
    /** By how much vapour that passes the sensor makes it read low, K; 0 without. */
    double slug;

    /** What is left of the last drive in engine and gearbox after the soak, K over outside air. */
    double rest;

    /** Share of the compressor's torque that is announced to the governor, and how early, s. */
    double announced = 1.0;

    double lead;
    /** Multiplier on what ignition can add at once. */
    double reserve = 1.0;
    /** Multiplier on the inertia of what turns. */
    double inertia = 1.0;

    /** W/m2. */
    double sun;
    /** Relative, 0..1. */
    double humidity;

    /** Speed a fan turns at for a command, both 0..1. */
    double fanSpeed(double command) {
        return switch (fan) {
            case AS_TOLD -> command;
            case DEAD -> 0.0;
            case ONE_SPEED -> command > 0.1 ? oneSpeed : 0.0;
        };
    }
}
