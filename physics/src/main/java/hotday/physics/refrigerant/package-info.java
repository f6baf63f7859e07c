/**
 * R-134a and R-1234yf: the published Helmholtz equations of state ({@link hotday.physics.refrigerant.Refrigerant}) and tables made from them for
 */
package hotday.physics.refrigerant;
