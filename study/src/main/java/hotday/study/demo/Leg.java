package hotday.study.demo;

/**
 * One stretch of a virtual drive.
 *
 * @param what for people
 * @param seconds long
 * @param speed to hold, m/s
 * @param grade rise over run
 * @param airConditioning switched on
 */
record Leg(String what, double seconds, double speed, double grade, boolean airConditioning) {}
