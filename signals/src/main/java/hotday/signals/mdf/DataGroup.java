package hotday.signals.mdf;

import java.util.List;

/**
 * Groups whose records lie in the same data.
 *
 * @param position of the block, bytes
 * @param idBytes before every record that say which group it is of; 0 with one group
 * @param data link; 0 for none
 */
record DataGroup(long position, int idBytes, long data, List<Group> groups) {
    DataGroup {
        groups = List.copyOf(groups);
    }
}
