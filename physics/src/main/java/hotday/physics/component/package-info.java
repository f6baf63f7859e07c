/**
 * Parts of the cooling system as small records with pure functions: fan curve, air path in one stream, wax thermostat,
 * pump, core, cabin with its evaporator coil, and the electrical supply with its fan. No state of their own: what has memory takes it as an argument and gives it back. Plants put them in order
 * elsewhere.
 */
package hotday.physics.component;
