/**
 * What must hold on networks while frames pass: {@link hotday.signals.expect.Expected} says it,
 * {@link hotday.signals.expect.Watchman} looks on and gives a {@link hotday.signals.expect.Verdict} each. How people type
 * it is read in {@code hotday.signals.gateway}; docs/network.md says what each means.
 */
package hotday.signals.expect;
