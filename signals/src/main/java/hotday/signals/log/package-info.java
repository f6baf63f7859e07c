/**
 * Recordings on disk: how text files of many makes are cut into rows and cells. Start with
 * {@link hotday.signals.log.DelimitedText}. What a column means, its unit and its time base are known in
 * {@code hotday.signals.channel} only.
 */
package hotday.signals.log;
