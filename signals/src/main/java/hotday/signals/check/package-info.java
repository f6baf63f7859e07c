/**
 * What a frame carries to show that it came through whole and in its turn: checksums ({@link hotday.signals.check.Crc})
 * and rolling counters ({@link hotday.signals.check.RollingCounter}). Which bytes a checksum covers, and what is done
 * about a wrong one, is known by whoever describes the message.
 */
package hotday.signals.check;
