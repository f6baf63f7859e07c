package hotday.physics.refrigerant;

/** A state outside the range of an equation of state; the message names quantity, value, unit and limit. */
public final class RangeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    RangeException(String message) {
        super(message);
    }
}
