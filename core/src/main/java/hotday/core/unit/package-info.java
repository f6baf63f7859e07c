/**
 * Units at the edge: what people type becomes SI ({@link hotday.core.unit.Units}), what leaves is shown in the units they
 * chose ({@link hotday.core.unit.Display}). Nothing else in the program converts.
 */
package hotday.core.unit;
