package hotday.vehicle.front;

/**
 * What the rest of the vehicle and the weather ask of the front.
 *
 * @param speed of the air against the face, m/s
 * @param ambient K
 * @param pressure of the air, Pa absolute
 * @param fanSpeed over full speed, 0..1
 * @param coolant temperature entering the radiator, K
 * @param coolantFlow through the radiator, kg/s
 * @param gearboxHeat from the gearbox cooler, W, 0 or more
 * @param condenserHeat W, 0 or more
 * @param chargeHeat from the charge-air cooler, W, 0 or more
 * @param surfaceHeat of engine and oil pan to the air in the bay, W
 */
public record FrontInputs(
        double speed,
        double ambient,
        double pressure,
        double fanSpeed,
        double coolant,
        double coolantFlow,
        double gearboxHeat,
        double condenserHeat,
        double chargeHeat,
        double surfaceHeat) {}
