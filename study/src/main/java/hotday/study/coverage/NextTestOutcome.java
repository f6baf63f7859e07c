package hotday.study.coverage;

/**
 * What the recommended further test and one drawn at random did to the ceiling that was asked about.
 *
 * @param kase id of its case
 * @param recommended id of the step that was said to tell most
 * @param random id of the step that was drawn
 * @param expected share by which the recommended one was said to narrow the interval
 * @param narrowed share by which it did
 * @param narrowedByRandom the same of the drawn one
 */
public record NextTestOutcome(
        String kase, String recommended, String random, double expected, double narrowed, double narrowedByRandom) {}
