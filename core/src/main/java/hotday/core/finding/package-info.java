/**
 * What a person should know: findings with a stable key, a severity, a place and typed values. Start with
 * {@link hotday.core.finding.Finding}. Wrong input is one {@link hotday.core.finding.InputException} carrying all its
 * faults. No texts of a single topic live here.
 */
package hotday.core.finding;
