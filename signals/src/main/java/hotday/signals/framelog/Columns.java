package hotday.signals.framelog;

import java.util.Map;

/**
 * What the columns of a recording are.
 *
 * @param headerLine number of the line of names, from 1
 * @param delimiter between cells
 * @param names cells of the header
 * @param at column of a role, from 0
 * @param bytes columns of single bytes of payload in order; empty when it lies in one cell
 * @param stampUnit of the time column; seconds where there is none
 * @param identifiers base of identifiers or parameter groups
 * @param addresses base of priorities and addresses
 * @param data base of the payload
 */
record Columns(
        int headerLine,
        char delimiter,
        int names,
        Map<Role, Integer> at,
        int[] bytes,
        StampUnit stampUnit,
        NumberBase identifiers,
        NumberBase addresses,
        NumberBase data) {
    /** -1 where there is no such column. */
    int of(Role role) {
        return at.getOrDefault(role, -1);
    }

    boolean timed() {
        return at.containsKey(Role.TIME);
    }
}
