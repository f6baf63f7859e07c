/**
 * What trucks, tractors and generators say over frames of 29 bits (SAE J1939): start with
 * {@link hotday.signals.j1939.J1939Decoder}. Identifiers are taken apart in {@link hotday.signals.j1939.J1939Id}, longer
 * messages put together in {@link hotday.signals.j1939.J1939Transport}; which parameters are known, and how well, stands
 * in the table {@code spns.csv} beside {@link hotday.signals.j1939.SpnTable}. Nothing here sends.
 */
package hotday.signals.j1939;
