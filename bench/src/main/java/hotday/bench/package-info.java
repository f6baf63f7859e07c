/**
 * Measured speed, beside the general library that would do the same work. Run by {@code ./hotday bench}; never by the
 * tests, never shipped.
 */
package hotday.bench;
