package hotday.physics.refrigerant;

/**
 * Nodes of pressure without a logarithm: every octave is cut into equal pieces, so that a place follows from the bits of
 * the number. Inside a piece the place is linear in pressure; the pieces double in size from octave to octave.
 */
final class PressureScale {
    private static final double BITS_OF_AN_OCTAVE = 0x1p52;

    private final long lowBits;
    private final double perBit;
    private final double[] nodes;

    /**
     * @param low a power of two, Pa
     * @param pieces of an octave
     * @param count of pieces in all
     */
    PressureScale(double low, int pieces, int count) {
        lowBits = Double.doubleToRawLongBits(low);
        perBit = pieces / BITS_OF_AN_OCTAVE;
        nodes = new double[count + 1];
        for (int i = 0; i <= count; i++) {
            nodes[i] = low * (1 << i / pieces) * (1.0 + (double) (i % pieces) / pieces);
        }
    }

    /** Number of nodes. */
    int size() {
        return nodes.length;
    }

    /** Pa. */
    double node(int i) {
        return nodes[i];
    }

    /** Size of the piece above a node, Pa. */
    double width(int i) {
        return nodes[i + 1] - nodes[i];
    }

    /** Place among the nodes of a pressure, Pa; may lie outside. */
    double place(double pressure) {
        return (Double.doubleToRawLongBits(pressure) - lowBits) * perBit;
    }

    /** Place cut to the nodes. */
    double inside(double pressure) {
        return Math.min(nodes.length - 1 - 1e-9, Math.max(0.0, place(pressure)));
    }
}
