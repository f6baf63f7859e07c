/**
 * How long frames wait for a CAN bus: {@link hotday.signals.bus.FrameLength} in bits, load and worst-case response times
 * of everything on it in {@link hotday.signals.bus.Schedule}. What the frames mean is known elsewhere. Relations, their
 * source and their limits: docs/network.md.
 */
package hotday.signals.bus;
