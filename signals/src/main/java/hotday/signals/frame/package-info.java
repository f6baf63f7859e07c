/**
 * A frame as it passed on a network, whoever recorded it: start with {@link hotday.signals.frame.Frame}. What its bytes
 * mean is known to decoders ({@link hotday.signals.frame.FrameDecoder}), each in a package of its own:
 * {@code hotday.signals.dbc} has the one of network descriptions. Their samples go to a
 * {@link hotday.signals.frame.SampleSink}.
 */
package hotday.signals.frame;
