/**
 * Recordings run through a translation sheet: {@link hotday.study.replay.Replay} says what the other side would have seen,
 * and whether what was expected held. The gateway itself is {@code hotday.signals.translator}.
 */
package hotday.study.replay;
