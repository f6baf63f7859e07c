package hotday.physics.refrigerant;

/** Liquid and vapour in equilibrium: equal temperature, pressure and Gibbs energy. Mutable, of one thread. */
final class Saturated {
    final Point liquid = new Point();
    final Point vapour = new Point();
    /** K. */
    double temperature;
    /** Pa. */
    double pressure;
}
