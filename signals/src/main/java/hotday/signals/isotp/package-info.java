/**
 * Messages longer than a frame, put together from what a listener sees (ISO 15765-2): start with
 * {@link hotday.signals.isotp.IsoTpListener}. Nothing here sends, not even flow control. What the messages say is known
 * in {@code hotday.signals.obd} and {@code hotday.signals.uds}; the transport of trucks and tractors is another one, see
 * {@code hotday.signals.j1939}.
 */
package hotday.signals.isotp;
