package hotday.signals.j1939;

/** Takes the messages that a {@link J1939Transport} puts together. */
public interface TransportSink {
    /**
     * A whole message.
     *
     * @param time s, of the last packet
     * @param bus number of the network
     * @param group number of its parameter group
     * @param source address of the sender
     * @param destination address it is meant for, {@link J1939Id#EVERYBODY} when broadcast
     * @param data its bytes from the first on, valid during this call only
     * @param length 9 to 1785 bytes
     */
    void message(double time, int bus, int group, int source, int destination, byte[] data, int length);
}
