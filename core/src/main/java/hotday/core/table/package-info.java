/** Relations given by points: {@link hotday.core.table.Curve}. Looking up allocates nothing. */
package hotday.core.table;
