package hotday.signals.isotp;

/** Takes what an {@link IsoTpListener} finds. */
public interface IsoTpSink {
    /** A whole message. It is shown by an object that the next one overwrites: copy what is kept. */
    void message(IsoTpMessage message);

    /**
     * A message that came to nothing, or a frame that belongs to none.
     *
     * @param event anything but {@link IsoTpEvent#COMPLETE} and {@link IsoTpEvent#UNFINISHED}
     * @param time s, when it was noticed
     * @param bus number of the network
     * @param id identifier of the sender's frames
     */
    default void lost(IsoTpEvent event, double time, int bus, int id) {}
}
