package hotday.validation.physics;

import hotday.physics.cycle.Compressor;
import hotday.physics.cycle.CycleLoop;
import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.Refrigerant;
import hotday.validation.Check;
import hotday.validation.Topic;
import java.util.ArrayList;
import java.util.List;

/** Refrigerant cycles: compressor, textbook cycles, gauge pressures on the road and carried from a mild to a hot day. */
public final class CycleChecks implements Topic {
    private static final double PSI = 6894.757293168; // Pa
    private static final double SEA_LEVEL = 14.696; // psi
    private static final double TON = 211e3 / 60.0; // W
    private static final double TEXTBOOK = 0.01;
    private static final double RECOMPUTED = 0.001;
    private static final String FIT =
            "regression of the compressor law, recomputed with the published equations of state";
    private static final String MORAN = "Moran and Shapiro, Fundamentals of Engineering Thermodynamics, ";
    private static final String CENGEL = "Cengel and Boles, Thermodynamics, ";
    private static final String SERVICE = "saturation tables (Tillner-Roth and Baehr 1994, Richter et al. 2011)";

    @Override
    public String title() {
        return "Refrigerant cycle";
    }

    @Override
    public List<Check> checks() {
        List<Check> out = new ArrayList<>();
        compressor(out);
        moranShapiro(out);
        cengelBoles(out);
        hotDay(out);
        condensing(out);
        return out;
    }

    /** 170 cm3, 1200 rpm, suction at 300 kPa with 10 K superheat. */
    private static void compressor(List<Check> out) {
        int[] kilopascal = {1200, 1500, 1800, 2200, 2600};
        double[] flow = {35.84, 33.69, 31.54, 28.67, 25.80};
        double[] r134a = {1705, 1891, 2002, 2065, 2054};
        double[] torque134a = {13.57, 15.05, 15.93, 16.43, 16.35};
        double[] r1234yf = {1657, 1825, 1920, 1964, 1939};
        double[] torque1234yf = {13.18, 14.53, 15.28, 15.63, 15.43};
        for (int i = 0; i < kilopascal.length; i++) {
            double[] loop = compressed(Refrigerant.R134A, kilopascal[i]);
            String at = ", 170 cm3, 1200 rpm, 300 to " + kilopascal[i] + " kPa";
            near("flow, R-134a" + at, 1e3 * loop[CycleLoop.MASS_FLOW], flow[i], 0.002, "g/s", FIT, out);
            power("R-134a" + at, loop, r134a[i], torque134a[i], out);
            power("R-1234yf" + at, compressed(Refrigerant.R1234YF, kilopascal[i]), r1234yf[i], torque1234yf[i], out);
        }
    }

    private static double[] compressed(Refrigerant r, int kilopascal) {
        double[] loop = new double[CycleLoop.LENGTH];
        new CycleLoop(r, Compressor.fixed(170e-6, 1.0))
                .compress(300e3, 1e3 * kilopascal, 1200.0 / 60.0 * 2.0 * Math.PI, 1.0, 10.0, loop);
        return loop;
    }

    private static void power(String what, double[] loop, double watts, double torque, List<Check> out) {
        near("shaft power, " + what, loop[CycleLoop.SHAFT_POWER], watts, 0.002, "W", FIT, out);
        near("shaft torque, " + what, loop[CycleLoop.SHAFT_TORQUE], torque, 0.002, "N m", FIT, out);
    }

    private static void moranShapiro(List<Check> out) {
        Cycle ideal = cycle("example 10.1", 0.08, vapour(0.0), 1.0, pressure(26.0), liquid(26.0));
        ideal.book(MORAN, new double[] {1398, 3.67 * TON, 9.24}, out);
        ideal.recomputed(new double[] {1408.7, 3.700 * TON, 9.236}, out);
        FluidState cold = vapour(-10.0);
        double condensed = Refrigerant.R134A.atPressureQuality(9e5, 0.0).enthalpy();
        Cycle spread = cycle("example 10.2", 0.08, cold, 1.0, 9e5, condensed);
        spread.book(MORAN, new double[] {2483, 3.23 * TON, 4.57}, out);
        spread.recomputed(new double[] {2498.4, 3.250 * TON, 4.575}, out);
        Cycle lossy = cycle("example 10.3", 0.08, cold, 0.8, 9e5, liquid(30.0));
        lossy.book(MORAN, new double[] {3104, 3.41 * TON, 3.86}, out);
        lossy.recomputed(new double[] {3123.0, 3.434 * TON, 3.867}, out);
    }

    /** Shaft power and cooling, W. */
    private record Cycle(String example, double work, double cooling) {
        /** @param expected shaft power, W, cooling, W, their ratio */
        void book(String book, double[] expected, List<Check> out) {
            rows(expected, TEXTBOOK, book + example, out);
        }

        /** @param expected likewise */
        void recomputed(double[] expected, List<Check> out) {
            rows(expected, RECOMPUTED, "the same, recomputed with the published equation of state", out);
        }

        private void rows(double[] expected, double tolerance, String source, List<Check> out) {
            near("power, " + example + ", R-134a", work, expected[0], tolerance, "W", source, out);
            near("cooling, " + example + ", R-134a", cooling, expected[1], tolerance, "W", source, out);
            String ratio = "coefficient of performance, " + example + ", R-134a";
            near(ratio, cooling / work, expected[2], tolerance, "-", source, out);
        }
    }

    private static Cycle cycle(
            String example, double flow, FluidState suction, double efficiency, double high, double liquid) {
        double ideal =
                Refrigerant.R134A.atPressureEntropy(high, suction.entropy()).enthalpy();
        return new Cycle(
                example, flow * (ideal - suction.enthalpy()) / efficiency, flow * (suction.enthalpy() - liquid));
    }

    private static void cengelBoles(List<Check> out) {
        FluidState saturated = Refrigerant.R134A.atPressureQuality(0.14e6, 1.0);
        double liquid = Refrigerant.R134A.atPressureQuality(0.8e6, 0.0).enthalpy();
        Cycle ideal = cycle("example 11-1", 0.05, saturated, 1.0, 0.8e6, liquid);
        ideal.book(CENGEL, new double[] {1810, 7180, 3.97}, out);
        ideal.recomputed(new double[] {1810.6, 7184, 3.968}, out);
        FluidState suction = Refrigerant.R134A.atPressureTemperature(0.14e6, 263.15);
        double discharge =
                Refrigerant.R134A.atPressureTemperature(0.8e6, 323.15).enthalpy();
        double isentropic =
                Refrigerant.R134A.atPressureEntropy(0.8e6, suction.entropy()).enthalpy();
        double efficiency = (isentropic - suction.enthalpy()) / (discharge - suction.enthalpy());
        double subcooled =
                Refrigerant.R134A.atPressureTemperature(0.72e6, 299.15).enthalpy();
        Cycle real = cycle("example 11-2", 0.05, suction, efficiency, 0.8e6, subcooled);
        real.book(CENGEL, new double[] {2020, 7930, 3.93}, out);
        real.recomputed(new double[] {2016.9, 7926, 3.930}, out);
        String example = "example 11-2";
        near("isentropic efficiency, " + example, efficiency, 0.939, TEXTBOOK, "-", CENGEL + example, out);
    }

    private static double pressure(double celsius) {
        return Refrigerant.R134A.saturationPressure(celsius + 273.15);
    }

    private static FluidState vapour(double celsius) {
        return Refrigerant.R134A.atTemperatureQuality(celsius + 273.15, 1.0);
    }

    private static double liquid(double celsius) {
        return Refrigerant.R134A.atTemperatureQuality(celsius + 273.15, 0.0).enthalpy();
    }

    /** Head pressure on the hot day is that of saturation at the ambient plus the same temperature difference. */
    private static void hotDay(List<Check> out) {
        int[] ambient = {100, 110, 115};
        hotDay(Refrigerant.R134A, 80, 195, ambient, new double[] {258, 295, 315}, out);
        hotDay(Refrigerant.R1234YF, 80, 195, ambient, new double[] {255, 289, 307}, out);
        hotDay(Refrigerant.R134A, 75, 165, ambient, new double[] {238, 272, 291}, out);
    }

    private static void hotDay(Refrigerant r, int mild, int gauge, int[] ambient, double[] expected, List<Check> out) {
        double above = r.saturationTemperature((gauge + SEA_LEVEL) * PSI) - kelvin(mild);
        for (int i = 0; i < ambient.length; i++) {
            out.add(Check.near(
                    "head at " + ambient[i] + " degF from " + gauge + " psi at " + mild + " degF, " + r.label(),
                    gauge(r, kelvin(ambient[i]) + above),
                    expected[i],
                    2.0,
                    "psi",
                    SERVICE));
        }
    }

    /** Condensing 40 degF above ambient: road speed by a manufacturer's service table (90 degF: 200 psi). */
    private static void condensing(List<Check> out) {
        int[] ambient = {70, 80, 90, 100, 110};
        double[] expected = {146, 171, 200, 229, 263};
        for (int i = 0; i < ambient.length; i++) {
            out.add(Check.near(
                    "R-134a condensing 40 degF above " + ambient[i] + " degF",
                    gauge(Refrigerant.R134A, kelvin(ambient[i] + 40.0)),
                    expected[i],
                    ambient[i] == 90 ? 2.0 : 0.6,
                    "psi",
                    ambient[i] == 90 ? "manufacturer's service table of a compact, 2006" : SERVICE));
        }
    }

    private static double gauge(Refrigerant r, double temperature) {
        return r.saturationPressure(temperature) / PSI - SEA_LEVEL;
    }

    private static double kelvin(double fahrenheit) {
        return (fahrenheit + 459.67) / 1.8;
    }

    private static void near(
            String what, double ours, double expected, double relative, String unit, String source, List<Check> out) {
        out.add(Check.relative(what, ours, expected, relative, unit, source));
    }
}
