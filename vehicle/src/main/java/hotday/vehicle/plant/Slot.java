package hotday.vehicle.plant;

/** A named place in one of the plant's flat arrays. */
public interface Slot {
    /** Position in the array. */
    int index();

    /** SI unit of what stands there; "1" for a ratio. */
    String unit();
}
