package hotday.signals.gateway;

import hotday.core.finding.Place;
import java.util.Map;

/** Where a block of a sheet stands, and its keys. */
record Places(Place block, Map<String, Place> keys) {
    Places {
        keys = Map.copyOf(keys);
    }

    /** Of a key, or of the block where it is not typed. */
    Place at(String key) {
        return keys.getOrDefault(key, block);
    }
}
