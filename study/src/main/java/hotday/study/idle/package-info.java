/**
 * How to announce a build's compressor to its idle control: {@link hotday.study.idle.IdleCompensation} makes the table over head pressure and engine
 * speed. The idle control itself is {@code hotday.vehicle.idle}. Page: docs/idle.md.
 */
package hotday.study.idle;
