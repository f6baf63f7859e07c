/**
 * Cases, read from files ({@link hotday.vehicle.cases.CaseFile}; docs/cases.md), and their ambient ceilings: settled states
 * on the plant, and the outside temperature at which the first limit gives way ({@link
 * hotday.vehicle.cases.AmbientCeiling}).
 */
package hotday.vehicle.cases;
