/**
 * Properties of the fluids a cooling system meets: dry and moist air, the standard atmosphere, coolant and its boiling, oils. Static
 * functions of temperature (K), pressure (Pa absolute) and share; no state, no allocation. Not here: refrigerants. Accuracy of each fit: docs/physics/fluids.md.
 */
package hotday.physics.fluid;
