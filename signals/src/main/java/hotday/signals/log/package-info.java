/** Recordings on disk: how text files of many makes are cut into rows. Names, units and time are given to them in {@code channel}. */
package hotday.signals.log;
