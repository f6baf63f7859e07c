package hotday.study.events;

import java.util.Locale;

/** What may have switched though nobody recorded it. */
public enum Kind {
    FAN_ON,
    FAN_OFF,
    COMPRESSOR_ON,
    COMPRESSOR_OFF,
    THERMOSTAT_OPEN,
    THERMOSTAT_CLOSED,
    HEATER_ON,
    HEATER_OFF;

    /** As written in files, {@code fan_on}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
