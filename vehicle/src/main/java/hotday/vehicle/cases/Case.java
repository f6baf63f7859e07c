package hotday.vehicle.cases;

/**
 * A steady situation that the vehicle must stand.
 *
 * @param id for programs: lower case, hyphens
 * @param title for people
 * @param speed m/s
 * @param grade rise over run
 * @param airConditioning compressor engaged and condenser giving heat
 */
public record Case(String id, String title, double speed, double grade, boolean airConditioning) {}
