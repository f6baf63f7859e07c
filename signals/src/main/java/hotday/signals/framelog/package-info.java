/**
 * Recordings of frames on disk, as text of several layouts: start with {@link hotday.signals.framelog.FrameLog}. A line is
 * turned into a frame straight from the bytes read, so that a file of any size takes the same memory. What a layout is and
 * what its numbers mean is told from the first lines ({@code DelimitedHead}), and refused where they do not tell.
 */
package hotday.signals.framelog;
