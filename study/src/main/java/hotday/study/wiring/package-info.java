/**
 * Whether the fan of a build is wired so that it runs on the hot day and nothing burns: {@link hotday.study.wiring.WiringCheck}. Conductors and fuses
 * themselves are in {@code hotday.physics.component}. Page: docs/wiring.md.
 */
package hotday.study.wiring;
