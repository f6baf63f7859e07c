/**
 * Air through the vehicle front as tiles: cores one behind the other, openings and blanked places, shroud, fans, relief
 * flaps, the bay and its exit. Start with {@link hotday.vehicle.airpath.Face} (what is there), then
 * {@link hotday.vehicle.airpath.TilePath} (compiled, solves) and {@link hotday.vehicle.airpath.TileFlow} (inputs and results of
 * one thread). No heat is exchanged here: temperatures are given. Equations: docs/physics/air-path.md.
 */
package hotday.vehicle.airpath;
