package hotday.signals.framelog;

import hotday.signals.frame.Frame;

/** How a line of a recording is a frame. Keeps what it needs between lines; for one thread. */
interface LineForm {
    /** The line is a frame. */
    int FRAME = 0;
    /** The line holds nothing and is not meant to. */
    int NOTHING = -1;

    /**
     * Reads one line.
     *
     * @param from of the first byte
     * @param to behind the last byte, line end not counted
     * @param frame shows the frame when there is one, until the next line
     * @return {@link #FRAME}, {@link #NOTHING}, or the column (from 1) at which the line does not read
     */
    int read(byte[] bytes, int from, int to, Frame frame);

    /** What was wrong at that column. */
    String why();

    /** The layout in words. */
    String title();
}
