/**
 * Relations for heat transfer and friction as static functions of plain doubles: exchanger effectiveness, louvered fins,
 * flow in tubes, condensing and boiling in them, fins, the pressure loss of a core, heat of an engine. No state, no allocation, safe in any thread. SI. Pages with equations, ranges
 * and measured check numbers: docs/physics.
 */
package hotday.physics.transfer;
