/**
 * Build sheets: what somebody typed about a car, read, checked and completed. Start with
 * {@link hotday.vehicle.sheet.BuildSheet}; one class a block of the sheet. What the numbers mean for the car's temperatures
 * is known in {@code vehicle.plant}. Keys for people: docs/build-sheet.md.
 */
package hotday.vehicle.sheet;
