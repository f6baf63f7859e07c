package hotday.study.prove;

/**
 * One branch of one unrecorded actuator, the other unrecorded actuators averaged over.
 *
 * @param state which actuator
 * @param branch what it is taken to have done
 * @param score against the measured coolant; model minus measured
 * @param peak highest coolant from the scored start on, K
 * @param likelihood share 0..1 of this branch among the branches of the actuator, judged afterwards by the measured
 *     coolant; the prediction itself does not use it. NaN when coolant was not measured
 */
public record Bracket(HiddenState state, String branch, Score score, double peak, double likelihood) {}
