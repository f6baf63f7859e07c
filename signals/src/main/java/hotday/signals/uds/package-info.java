/**
 * What control units answer to a workshop's requests (ISO 14229-1), as a listener reads it: start with
 * {@link hotday.signals.uds.UdsReader}, which takes whole messages of {@code hotday.signals.isotp}. What the bytes of an
 * identifier mean is the maker's secret, so they stay bytes. Nothing here asks a unit anything.
 */
package hotday.signals.uds;
