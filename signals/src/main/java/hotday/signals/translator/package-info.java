/**
 * A translation between networks at work: whole numbers only, nothing allocated, the same to the last bit in any
 * controller that is programmed from docs/network.md. {@link hotday.signals.translator.Program} is what is to be done,
 * without a word of how it was typed; {@link hotday.signals.translator.Translator} does it. Sheets are turned into
 * programs in {@code hotday.signals.gateway}.
 */
package hotday.signals.translator;
