/**
 * What nobody recorded, told from what somebody did: fan, compressor, thermostat and heater switching, seen in coolant, idle
 * load and supply voltage. Start at {@link hotday.study.events.Events}; what it can and cannot see is in docs/physics/events.md.
 */
package hotday.study.events;
