/**
 * Heat exchangers marched tile by tile in the order in which their liquid or refrigerant flows, the air in series
 * through the depth. Start with {@link hotday.physics.exchanger.FaceGrid}, {@link hotday.physics.exchanger.Passes} and
 * {@link hotday.physics.exchanger.LiquidMarch}. Geometry is immutable and shared; marches hold their own arrays, one a
 * thread, and allocate nothing while they run. Not here: how much air flows (the air path) and what a fluid's properties are.
 * Page: docs/physics/exchangers.md.
 */
package hotday.physics.exchanger;
