/**
 * A frame as it passed on a network, whoever recorded it: start with {@link hotday.signals.frame.Frame}. What its bytes
 * mean is known in {@code hotday.signals.dbc}.
 */
package hotday.signals.frame;
