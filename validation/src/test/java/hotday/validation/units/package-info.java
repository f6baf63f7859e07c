/** What is typed, against published conversion factors. */
package hotday.validation.units;
