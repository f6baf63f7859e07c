/**
 * Numerical answers to "which value makes this true": {@link hotday.core.solve.LeastSquares} (fit with priors, over the
 * Levenberg-Marquardt of Hipparchus), {@link hotday.core.solve.PriorSearch} (where to start it),
 * {@link hotday.core.solve.Bracket} (one unknown between two ends), {@link hotday.core.solve.PseudoTransient} (where rates
 * come to rest) and {@link hotday.core.solve.DenseLu} (small linear
 * systems inside a time step). Expected failures are a status, never an exception. No physics and no units here.
 */
package hotday.core.solve;
