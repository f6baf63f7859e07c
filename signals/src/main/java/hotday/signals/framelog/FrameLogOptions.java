package hotday.signals.framelog;

import java.util.Optional;

/**
 * What a person says about a recording that does not say it itself.
 *
 * @param stampUnit unit of the time stamps
 * @param identifiers base of identifiers, parameter groups and addresses
 * @param data base of payload bytes
 */
public record FrameLogOptions(
        Optional<StampUnit> stampUnit, Optional<NumberBase> identifiers, Optional<NumberBase> data) {
    /** Nothing is said: header and content must tell. */
    public static final FrameLogOptions NONE =
            new FrameLogOptions(Optional.empty(), Optional.empty(), Optional.empty());
}
