package hotday.study.findings;

import hotday.signals.channel.ModelChannel;

/** What a log holds beside what drives the car, each in SI. */
enum Signal {
    COOLANT(ModelChannel.COOLANT_TEMPERATURE, "coolant", "degC"),
    OIL(ModelChannel.OIL_TEMPERATURE, "oil", "degC"),
    GEARBOX(ModelChannel.GEARBOX_TEMPERATURE, "gearbox", "degC"),
    HEAD(ModelChannel.HEAD_PRESSURE, "A/C high side", "kPa"),
    SUCTION(ModelChannel.SUCTION_PRESSURE, "A/C low side", "kPa"),
    /** Refrigerant behind the condenser, below saturation at the high side. */
    SUBCOOLING(ModelChannel.LIQUID_LINE_TEMPERATURE, "subcooling", "K"),
    VENT(ModelChannel.VENT_TEMPERATURE, "vent air", "degC"),
    VOLTAGE(ModelChannel.SUPPLY_VOLTAGE, "supply voltage", "V"),
    CURRENT(ModelChannel.FAN_CURRENT, "fan current", "A"),
    COMMAND(ModelChannel.FAN_DEMAND, "fan command", "1"),
    /** A replay gives it less the one recorded: what the clutch of the compressor does to it. */
    ENGINE_SPEED(ModelChannel.ENGINE_SPEED, "engine speed", "rpm");

    private final ModelChannel channel;
    private final String words;
    private final String unit;

    Signal(ModelChannel channel, String words, String unit) {
        this.channel = channel;
        this.words = words;
        this.unit = unit;
    }

    ModelChannel channel() {
        return channel;
    }

    String words() {
        return words;
    }

    /** Shown in this unit. */
    String unit() {
        return unit;
    }

    /** From SI to {@link #unit}; a difference of temperatures stays one. */
    double shown(double si) {
        return switch (this) {
            case COOLANT, OIL, GEARBOX, VENT -> si - 273.15;
            case HEAD, SUCTION -> si / 1e3;
            case ENGINE_SPEED -> si * 30.0 / Math.PI;
            default -> si;
        };
    }
}
