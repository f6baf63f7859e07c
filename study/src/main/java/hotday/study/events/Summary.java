package hotday.study.events;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the switchings of a vehicle add up to. Temperatures are those of the gauge, K.
 *
 * @param fanCycles fan starts seen
 * @param fanOn coolant when the fan starts
 * @param fanOff coolant when the fan stops
 * @param peak highest coolant of a cycle: lags behind the start
 * @param trough coolant where a pull-down ends: lags behind the stop
 * @param period s from one start to the next without a pause between
 * @param compressorStarts switch-ons seen at warm idle
 * @param compressorDuty share of the warm idle watched between first and last switching that the compressor ran
 */
public record Summary(
        int fanCycles,
        Optional<Estimate> fanOn,
        Optional<Estimate> fanOff,
        Optional<Estimate> peak,
        Optional<Estimate> trough,
        Optional<Estimate> period,
        int compressorStarts,
        OptionalDouble compressorDuty) {}
