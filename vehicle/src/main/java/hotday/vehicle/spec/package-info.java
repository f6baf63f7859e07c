/** The vehicle in SI records, complete and checked, as the plant wants it. No files, no time loop. */
package hotday.vehicle.spec;
