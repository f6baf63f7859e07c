package hotday.core.unit;

import java.util.ArrayList;
import java.util.List;

/**
 * Kinds of quantity that people type, each with the units it is accepted in; the first is SI. Factors are exact by
 * definition (international inch, pound, standard gravity; BTU of the International Table; NIST SP 811 appendix B) unless
 * a comment says otherwise.
 */
public enum Quantity {
    TEMPERATURE("temperature", "205 degF"),
    TEMPERATURE_DIFFERENCE("temperature difference", "5 K"),
    /** Above vacuum. Plain psi or bar is refused here: it could be a gauge reading. */
    PRESSURE_ABSOLUTE("absolute pressure", "101.3 kPa abs"),
    /** Above the air outside. */
    PRESSURE_GAUGE("gauge pressure", "16 psi"),
    PRESSURE_DIFFERENCE("pressure difference", "250 Pa"),
    SPEED("speed", "35 mph"),
    ACCELERATION("acceleration", "1.2 m/s2"),
    LENGTH("length", "22 in"),
    AREA("area", "0.75 m2"),
    VOLUME("volume", "4.2 l"),
    MASS("mass", "1750 kg"),
    DENSITY("density", "0.851 g/ml"),
    MASS_FLOW("mass flow", "1.2 g/s"),
    VOLUME_FLOW("volume flow", "120 l/min"),
    POWER("power", "110 kW"),
    ENERGY("energy", "3 kWh"),
    TORQUE("torque", "300 N m"),
    FORCE("force", "22.6 lbf"),
    ANGULAR_SPEED("rotational speed", "650 rpm"),
    TIME("time", "10 s"),
    CURRENT("current", "45 A"),
    VOLTAGE("voltage", "13.5 V"),
    /** A share, as a number or in percent. */
    RATIO("share", "70 %"),
    /** A coefficient or ratio without a unit. */
    NUMBER("number without unit", "3.2"),
    HEAT_CAPACITY("heat capacity", "60 kJ/K"),
    SPECIFIC_HEAT("specific heat", "3.6 kJ/(kg K)"),
    HEATING_VALUE("heating value", "42.8 MJ/kg"),
    SPECIFIC_ENTHALPY("specific enthalpy", "420 kJ/kg"),
    CONDUCTANCE("heat conductance", "80 W/K"),
    FORCE_PER_SPEED("force per speed", "1.2 lbf/mph"),
    FORCE_PER_SPEED_SQUARED("force per speed squared", "0.002 lbf/mph2"),
    PER_LENGTH("count per length", "15 /in"),
    SHARE_RATE("rate of a share", "15 %/s"),
    ANGLE("angle", "28 deg"),
    KINEMATIC_VISCOSITY("kinematic viscosity", "30 mm2/s"),
    RESISTANCE("electrical resistance", "8 mohm"),
    CHARGE("electric charge", "80 Ah"),
    CONDUCTANCE_PER_SPEED("heat conductance per speed", "0.9 W/K/(m/s)"),
    MASS_FLOW_PER_SPEED("mass flow per speed", "0.3 g/s/(m/s)"),
    SHARE_PER_KELVIN("share per temperature difference", "0.25 %/K"),
    /** Pump speed of a torque converter over the square root of its torque. */
    CONVERTER_CAPACITY("converter capacity", "150 rpm/sqrt(N m)"),
    IRRADIANCE("irradiance", "850 W/m2"),
    /** Of a network. */
    BIT_RATE("bit rate", "500 kbit/s");

    private static final double INCH = 0.0254;
    private static final double FOOT = 12 * INCH;
    private static final double MILE = 1609.344;
    private static final double POUND = 0.45359237;
    private static final double POUND_FORCE = POUND * 9.80665;
    private static final double PSI = POUND_FORCE / (INCH * INCH);
    private static final double GALLON = 231 * INCH * INCH * INCH;
    private static final double BTU = 1055.05585262;
    private static final double MPH = MILE / 3600;
    private static final double KMH = 1 / 3.6;
    private static final double HORSEPOWER = 550 * FOOT * POUND_FORCE;
    private static final double METRIC_HORSEPOWER = 75 * 9.80665;
    private static final double RPM = Math.PI / 30;

    private final String title;
    private final String example;
    private final List<Unit> units = new ArrayList<>();
    private final List<List<String>> aliases = new ArrayList<>();

    Quantity(String title, String example) {
        this.title = title;
        this.example = example;
    }

    static {
        TEMPERATURE
                .add(1, 0, "K")
                .add(1, 273.15, "degC", "°C", "C", "celsius", "degrees C")
                .add(5.0 / 9, 273.15 - 32 * 5.0 / 9, "degF", "°F", "F", "fahrenheit", "degrees F");
        TEMPERATURE_DIFFERENCE.add(1, "K", "degC", "°C", "C").add(5.0 / 9, "degF", "°F", "F");
        PRESSURE_ABSOLUTE
                .add(1, "Pa abs", "Pa", "Pa absolute")
                .add(1e3, "kPa abs", "kPa", "kPa absolute", "kPaa")
                .add(1e2, "hPa", "mbar", "mbar abs")
                .add(1e5, "bar abs", "bara", "bar absolute", "bar(a)")
                .add(1e6, "MPa abs", "MPa")
                .add(PSI, "psia", "psi abs", "psi absolute", "psi(a)")
                .add(3386.389, "inHg", "in Hg") // conventional mercury at 0 degC, as barometers are read
                .add(133.3224, "mmHg", "mm Hg")
                .add(101_325, "atm");
        PRESSURE_GAUGE
                .add(1, "Pa")
                .add(1e3, "kPa", "kPa gauge", "kPag")
                .add(1e2, "mbar", "hPa", "mbar gauge", "hPa gauge")
                .add(1e5, "bar", "barg", "bar gauge", "bar(g)")
                .add(PSI, "psi", "psig", "psi gauge", "psi(g)");
        PRESSURE_DIFFERENCE
                .add(1, "Pa")
                .add(1e3, "kPa")
                .add(1e2, "mbar", "hPa")
                .add(1e5, "bar")
                .add(PSI, "psi")
                .add(249.08891, "inH2O", "in H2O"); // conventional water, 9.80665 m/s2 and 1000 kg/m3
        SPEED.add(1, "m/s")
                .add(KMH, "km/h", "kph", "kmh")
                .add(MPH, "mph", "mi/h")
                .add(FOOT, "ft/s");
        ACCELERATION.add(1, "m/s2", "m/s^2").add(9.80665, "g").add(FOOT, "ft/s2", "ft/s^2");
        LENGTH.add(1, "m")
                .add(1e-3, "mm")
                .add(1e-2, "cm")
                .add(1e3, "km")
                .add(INCH, "in", "inch", "inches", "\"")
                .add(FOOT, "ft", "feet")
                .add(MILE, "mi", "mile", "miles");
        AREA.add(1, "m2", "m^2", "m²")
                .add(1e-4, "cm2", "cm^2", "cm²")
                .add(1e-6, "mm2", "mm^2", "mm²")
                .add(INCH * INCH, "in2", "in^2", "sq in")
                .add(FOOT * FOOT, "ft2", "ft^2", "sq ft");
        VOLUME.add(1, "m3", "m^3", "m³")
                .add(1e-3, "l", "L", "dm3", "litre", "liter", "litres", "liters")
                .add(1e-6, "cm3", "cc", "ml", "mL")
                .add(GALLON, "gal", "gallon", "gallons")
                .add(GALLON / 4, "qt", "quart", "quarts")
                .add(INCH * INCH * INCH, "in3", "ci", "cu in")
                .add(FOOT * FOOT * FOOT, "ft3", "ft^3", "cu ft");
        MASS.add(1, "kg").add(1e-3, "g").add(1e3, "t").add(POUND, "lb", "lbs", "lbm");
        DENSITY.add(1, "kg/m3", "kg/m^3")
                .add(1e3, "g/ml", "g/cm3", "kg/l", "kg/L")
                .add(POUND / GALLON, "lb/gal")
                .add(POUND / (FOOT * FOOT * FOOT), "lb/ft3");
        MASS_FLOW
                .add(1, "kg/s")
                .add(1e-3, "g/s")
                .add(1.0 / 3600, "kg/h", "kg/hr")
                .add(1.0 / 60, "kg/min")
                .add(POUND, "lb/s")
                .add(POUND / 60, "lb/min")
                .add(POUND / 3600, "lb/h", "lb/hr");
        VOLUME_FLOW
                .add(1, "m3/s", "m^3/s")
                .add(1e-3 / 60, "l/min", "L/min", "lpm")
                .add(1e-3 / 3600, "l/h", "L/h")
                .add(1e-3, "l/s", "L/s")
                .add(1.0 / 3600, "m3/h", "m^3/h")
                .add(GALLON / 60, "gal/min", "gpm")
                .add(GALLON / 3600, "gal/h", "gph")
                .add(FOOT * FOOT * FOOT / 60, "cfm", "ft3/min");
        POWER.add(1, "W")
                .add(1e3, "kW")
                .add(HORSEPOWER, "hp", "bhp")
                .add(METRIC_HORSEPOWER, "PS")
                .add(BTU / 3600, "BTU/h", "BTU/hr");
        ENERGY.add(1, "J")
                .add(1e3, "kJ")
                .add(1e6, "MJ")
                .add(3600, "Wh")
                .add(3.6e6, "kWh")
                .add(BTU, "BTU");
        TORQUE.add(1, "N m", "Nm", "N*m")
                .add(1e3, "kN m", "kNm")
                .add(POUND_FORCE * FOOT, "lb ft", "lbf ft", "ft lb", "ft lbf", "lb-ft", "ft-lb");
        FORCE.add(1, "N").add(1e3, "kN").add(POUND_FORCE, "lbf");
        ANGULAR_SPEED.add(1, "rad/s").add(RPM, "rpm", "1/min", "r/min", "rev/min", "U/min");
        TIME.add(1, "s", "sec", "seconds")
                .add(1e-3, "ms")
                .add(60, "min", "minutes")
                .add(3600, "h", "hr", "hours");
        CURRENT.add(1, "A").add(1e-3, "mA");
        VOLTAGE.add(1, "V").add(1e-3, "mV");
        RATIO.add(1, "").add(0.01, "%", "percent");
        NUMBER.add(1, "");
        HEAT_CAPACITY.add(1, "J/K").add(1e3, "kJ/K").add(BTU * 1.8, "BTU/degF", "BTU/°F", "BTU/F");
        SPECIFIC_HEAT
                .add(1, "J/(kg K)", "J/kg/K")
                .add(1e3, "kJ/(kg K)", "kJ/kg/K")
                .add(BTU / POUND * 1.8, "BTU/(lb degF)", "BTU/lb/F");
        HEATING_VALUE.add(1, "J/kg").add(1e3, "kJ/kg").add(1e6, "MJ/kg").add(BTU / POUND, "BTU/lb", "BTU/lbm");
        SPECIFIC_ENTHALPY.add(1, "J/kg").add(1e3, "kJ/kg").add(BTU / POUND, "BTU/lb", "BTU/lbm");
        CONDUCTANCE.add(1, "W/K").add(1e3, "kW/K").add(BTU / 3600 * 1.8, "BTU/(h degF)", "BTU/h/F");
        FORCE_PER_SPEED.add(1, "N/(m/s)").add(1 / KMH, "N/(km/h)").add(POUND_FORCE / MPH, "lbf/mph");
        FORCE_PER_SPEED_SQUARED
                .add(1, "N/(m/s)2", "N/(m/s)^2")
                .add(1 / (KMH * KMH), "N/(km/h)2", "N/(km/h)^2")
                .add(POUND_FORCE / (MPH * MPH), "lbf/mph2", "lbf/mph^2");
        PER_LENGTH.add(1, "/m", "1/m").add(1 / INCH, "/in", "1/in", "fpi").add(100, "/cm", "1/cm");
        SHARE_RATE.add(1, "1/s").add(0.01, "%/s");
        ANGLE.add(1, "rad").add(Math.PI / 180, "deg", "°");
        KINEMATIC_VISCOSITY.add(1, "m2/s", "m^2/s").add(1e-6, "mm2/s", "mm^2/s", "cSt");
        RESISTANCE.add(1, "ohm", "Ω").add(1e-3, "mohm", "milliohm", "mΩ");
        CHARGE.add(1, "A s", "As").add(3600, "Ah", "A h");
        CONDUCTANCE_PER_SPEED
                .add(1, "W/K/(m/s)", "W s/(K m)")
                .add(1 / KMH, "W/K/(km/h)")
                .add(1 / MPH, "W/K/mph");
        MASS_FLOW_PER_SPEED
                .add(1, "kg/s/(m/s)", "kg/m")
                .add(1e-3, "g/s/(m/s)", "g/m")
                .add(1e-3 / KMH, "g/s/(km/h)")
                .add(1e-3 / MPH, "g/s/mph");
        SHARE_PER_KELVIN.add(1, "1/K").add(0.01, "%/K", "%/degC", "%/°C").add(0.018, "%/degF", "%/°F");
        CONVERTER_CAPACITY
                .add(1, "rad/s/sqrt(N m)")
                .add(RPM, "rpm/sqrt(N m)", "rpm/sqrt(Nm)")
                .add(RPM / Math.sqrt(POUND_FORCE * FOOT), "rpm/sqrt(lb ft)", "rpm/sqrt(lbf ft)", "rpm/sqrt(ft lb)");
        BIT_RATE.add(1, "bit/s").add(1e3, "kbit/s", "kbps", "kbit").add(1e6, "Mbit/s", "Mbps");
        IRRADIANCE.add(1, "W/m2", "W/m^2").add(1e3, "kW/m2", "kW/m^2").add(BTU / 3600 / (FOOT * FOOT), "BTU/(h ft2)");
    }

    private Quantity add(double factor, String... symbols) {
        return add(factor, 0, symbols);
    }

    private Quantity add(double factor, double offset, String... symbols) {
        units.add(new Unit(symbols[0], this, factor, offset));
        aliases.add(List.of(symbols));
        return this;
    }

    /** For people: "gauge pressure". */
    public String title() {
        return title;
    }

    /** Something that could be typed: "16 psi". */
    public String example() {
        return example;
    }

    /** Accepted units, SI first. */
    public List<Unit> units() {
        return List.copyOf(units);
    }

    List<List<String>> aliases() {
        return aliases;
    }
}
