/**
 * A recording of frames worked through from end to end: {@link hotday.study.decode.LogDecoding} sums it up and writes its
 * samples. How lines are frames is known in {@code hotday.signals.framelog}, what frames mean in the decoders handed in.
 */
package hotday.study.decode;
