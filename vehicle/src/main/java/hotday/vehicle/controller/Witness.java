package hotday.vehicle.controller;

/** Looks on while a controller works. */
public interface Witness {
    /** Sees nothing. */
    Witness NONE = (in, answered) -> {};

    /** Called after every tick. */
    void tick(Inputs in, Controller answered);
}
