/**
 * Checks of the whole against numbers from outside. {@link hotday.validation.ValidationTable} gathers them into one
 * table: a topic class for every subject contributes {@link hotday.validation.Check} rows with source and tolerance;
 * {@code ValidationTableTest} fails on every row that does not hold. Reference data stay outside the repository, see
 * {@link hotday.validation.SharedData}.
 */
package hotday.validation;
