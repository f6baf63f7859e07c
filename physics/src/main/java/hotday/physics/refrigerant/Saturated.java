package hotday.physics.refrigerant;

/** Liquid and vapour in equilibrium: equal temperature, pressure and Gibbs energy. Mutable, of one thread. */
final class Saturated {
    final Point liquid = new Point();
    final Point vapour = new Point();
    /** K. */
    double temperature;
    /** Pa. */
    double pressure;

    /** Saturation temperature over pressure, K/Pa (Clausius and Clapeyron). */
    double temperatureByPressure() {
        return (1.0 / vapour.density - 1.0 / liquid.density) / (vapour.entropy - liquid.entropy);
    }
}
