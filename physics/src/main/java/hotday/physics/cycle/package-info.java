/**
 * The refrigerant side of a vehicle air conditioner: compressor, condenser in three zones, expansion, and the pressure of a system at
 * rest. Functions of plain numbers without a state of their own. Start at {@link hotday.physics.cycle.CycleLoop}.
 */
package hotday.physics.cycle;
