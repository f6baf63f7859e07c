package hotday.physics.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.core.solve.Bracket;
import hotday.physics.refrigerant.Refrigerant;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** No jump where one law hands over to another, nothing infinite anywhere, and a condenser that adds up. */
class ContinuityTest {
    private static final double SPEED = 2.0 * Math.PI * 20.0;

    /** Of a pressure or temperature from one side of a seam to the other. */
    private static final double APART = 1e-9;

    /** Relative to the size of a quantity: where tables meet the saturation line they differ by so much. */
    private static final double JUMP = 3e-6;

    // the arguments
    private static final int LOW = 0;
    private static final int HIGH = 1;
    private static final int TURNING = 2;
    private static final int SHARE = 3;
    private static final int SUPERHEAT = 4;
    private static final int AIR = 5;
    private static final int FLOODED = 6;

    private static double[] usual() {
        return new double[] {3e5, 14e5, SPEED, 1.0, 6.0, 308.15, 0.1};
    }

    private static double[] run(CycleLoop loop, double[] a) {
        double[] out = new double[CycleLoop.LENGTH];
        loop.compress(a[LOW], a[HIGH], a[TURNING], a[SHARE], a[SUPERHEAT], out);
        loop.condense(out, 330.0, 450.0, 380.0, a[AIR], a[FLOODED]);
        return out;
    }

    /** Both sides of a seam. */
    private static void seam(CycleLoop loop, double[] arguments, int which, double at) {
        double[] a = arguments.clone();
        a[which] = at * (1.0 - APART);
        double[] below = run(loop, a);
        a[which] = at * (1.0 + APART);
        double[] above = run(loop, a);
        for (int k = CycleLoop.MASS_FLOW; k < CycleLoop.LENGTH; k++) {
            assertThat(above[k]).as("slot %s, argument %s at %s", k, which, at).isCloseTo(below[k], within(size(k)));
        }
    }

    private static double size(int slot) {
        boolean watts = slot == CycleLoop.CONDENSER_HEAT
                || slot == CycleLoop.TWO_PHASE_HEAT
                || slot == CycleLoop.CONDENSING_SURPLUS
                || slot == CycleLoop.SHAFT_POWER;
        boolean enthalpy = slot == CycleLoop.DISCHARGE_ENTHALPY || slot == CycleLoop.SUCTION_ENTHALPY;
        return JUMP * (watts ? 5e3 : enthalpy ? 4e5 : slot == CycleLoop.MASS_FLOW ? 0.03 : 3e3);
    }

    @ParameterizedTest
    @EnumSource
    void noJumps(Refrigerant r) {
        CycleLoop loop = new CycleLoop(r, Compressor.fixed(150e-6, 1.0));
        double[] a = usual();
        double condensing = r.saturationTemperature(a[HIGH]);
        for (double seam : new double[] {condensing, condensing - 1.0, condensing + 5.0}) {
            seam(loop, a, AIR, seam);
        }
        seam(loop, a, HIGH, a[LOW]);
        seam(loop, a, HIGH, CycleLoop.LOWEST_PRESSURE);
        seam(loop, a, HIGH, loop.highestPressure());
        seam(loop, a, LOW, CycleLoop.LOWEST_PRESSURE);
        seam(loop, a, LOW, loop.highestPressure());
        seam(loop, a, SUPERHEAT, 0.01);
        seam(loop, a, SUPERHEAT, 60.0);
        a[HIGH] = 6e5; // a few kelvin colder than the air
        seam(loop, a, LOW, a[HIGH]);
    }

    /** R-1234yf compressed without loss may end wet: where it just does, superheat is raised in steps of 20 microkelvin. */
    @Test
    void noJumpBetweenWetAndDryCompression() {
        Refrigerant r = Refrigerant.R1234YF;
        CycleLoop loop = new CycleLoop(r, Compressor.fixed(150e-6, 1.0));
        double[] a = usual();
        double wanted = r.atPressureQuality(a[HIGH], 1.0).entropy();
        double evaporating = r.saturationTemperature(a[LOW]);
        Bracket.Root dry = Bracket.root(
                s -> r.atPressureTemperature(a[LOW], evaporating + s).entropy() - wanted, 0.1, 30.0, 1e-9, 100);
        assertThat(dry.found()).isTrue();
        double step = 2e-5;
        double before = Double.NaN;
        for (double superheat = dry.value() - 0.02; superheat < dry.value() + 0.02; superheat += step) {
            a[SUPERHEAT] = superheat;
            double h = run(loop, a)[CycleLoop.DISCHARGE_ENTHALPY];
            if (!Double.isNaN(before)) {
                assertThat(h - before).isBetween(500.0 * step, 1500.0 * step);
            }
            before = h;
        }
    }

    /** The vapour zone is cut off where the two phases would lose their last share. */
    @ParameterizedTest
    @EnumSource
    void noJumpWhereVapourFillsTheFace(Refrigerant r) {
        CycleLoop loop = new CycleLoop(r, Compressor.fixed(150e-6, 1.0));
        double[] a = usual();
        a[AIR] = r.saturationTemperature(a[HIGH]) - 2.0;
        double full = 1.0 - 0.02 - a[FLOODED];
        double warm = 500.0;
        double cold = SPEED;
        while (warm - cold > 1e-9) {
            a[TURNING] = 0.5 * (warm + cold);
            boolean cut = run(loop, a)[CycleLoop.VAPOUR_SHARE] >= full;
            warm = cut ? a[TURNING] : warm;
            cold = cut ? cold : a[TURNING];
        }
        assertThat(run(loop, a)[CycleLoop.VAPOUR_SHARE]).isCloseTo(full, within(1e-6));
        seam(loop, a, TURNING, a[TURNING]);
    }

    /** The largest change over a step of 1 Pa or 1 mK along whole ranges. */
    @ParameterizedTest
    @EnumSource
    void smallStepsMakeSmallChanges(Refrigerant r) {
        CycleLoop loop = new CycleLoop(r, Compressor.fixed(150e-6, 1.0));
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 5_000; i++) {
            double[] a = usual();
            a[LOW] = random.nextDouble(0.3e5, 12e5);
            a[HIGH] = random.nextDouble(0.3e5, 36e5);
            a[AIR] = random.nextDouble(250.0, 350.0);
            a[SUPERHEAT] = random.nextDouble(0.0, 30.0);
            double heat = run(loop, a)[CycleLoop.CONDENSER_HEAT];
            a[HIGH] += 1.0;
            a[AIR] -= 1e-3;
            assertThat(run(loop, a)[CycleLoop.CONDENSER_HEAT]).isCloseTo(heat, within(2.0));
        }
    }

    @ParameterizedTest
    @EnumSource
    void finiteEverywhere(Refrigerant r) {
        CycleLoop loop = new CycleLoop(r, Compressor.variable(150e-6, 1.0));
        double[] pressures = {-1e5, 0.0, 1.0, 5e4, 3e5, 14e5, 33e5, 45e5, 1e9};
        double[] temperatures = {1.0, 200.0, 300.0, 326.0, 500.0, 2000.0};
        for (double low : pressures) {
            for (double high : pressures) {
                for (double speed : new double[] {-10.0, 0.0, 1e-9, 100.0, 2000.0}) {
                    for (double air : temperatures) {
                        for (double superheat : new double[] {-5.0, 0.0, 1000.0}) {
                            finite(run(loop, new double[] {low, high, speed, 1.0, superheat, air, 0.1}));
                            finite(run(loop, new double[] {low, high, speed, 0.0, superheat, air, 2.0}));
                        }
                    }
                }
            }
        }
    }

    private static void finite(double[] out) {
        double sum = 0.0;
        for (double value : out) {
            sum += Math.abs(value);
        }
        assertThat(sum).isFinite();
        double taken = out[CycleLoop.MASS_FLOW] * (out[CycleLoop.DISCHARGE_ENTHALPY] - out[CycleLoop.LIQUID_ENTHALPY]);
        assertThat(out[CycleLoop.CONDENSER_HEAT] + out[CycleLoop.CONDENSING_SURPLUS])
                .isCloseTo(taken, within(1e-9 * (1.0 + Math.abs(out[CycleLoop.CONDENSER_HEAT]))));
    }

    @ParameterizedTest
    @EnumSource
    void atRestNothingFlows(Refrigerant r) {
        CycleLoop loop = new CycleLoop(r, Compressor.variable(150e-6, 1.0));
        double[] a = usual();
        a[SHARE] = 0.0;
        double[] open = run(loop, a);
        assertThat(open[CycleLoop.MASS_FLOW]).isZero();
        assertThat(open[CycleLoop.SHAFT_POWER]).isZero();
        assertThat(open[CycleLoop.SHAFT_TORQUE]).isZero();
        // the condenser goes on giving its heat away
        assertThat(open[CycleLoop.CONDENSING_SURPLUS])
                .isCloseTo(-0.9 * 450.0 * (open[CycleLoop.HIGH_SATURATION] - a[AIR]), within(1e-6));
        a[SHARE] = 1.0;
        a[TURNING] = 0.0;
        double[] standing = run(loop, a);
        assertThat(standing[CycleLoop.MASS_FLOW]).isZero();
        assertThat(standing[CycleLoop.SHAFT_TORQUE]).isPositive();
    }

    /** The three zones marched in small steps, with the mean specific heats that the closed form uses. */
    @ParameterizedTest
    @EnumSource
    void marchedInSmallSteps(Refrigerant r) {
        CycleLoop loop = new CycleLoop(r, Compressor.fixed(150e-6, 1.0));
        double[] a = usual();
        double[] out = run(loop, a);
        double flow = out[CycleLoop.MASS_FLOW];
        double saturation = out[CycleLoop.HIGH_SATURATION];
        double hotter = out[CycleLoop.DISCHARGE_TEMPERATURE] - saturation;
        double vapour = flow * (out[CycleLoop.DISCHARGE_ENTHALPY] - out[CycleLoop.HIGH_VAPOUR_ENTHALPY]) / hotter;
        double liquid = flow * out[CycleLoop.HIGH_LIQUID_HEAT];
        int steps = 200_000;
        double temperature = out[CycleLoop.DISCHARGE_TEMPERATURE];
        double heat = 0.0;
        for (int i = 0; i < steps; i++) {
            boolean flooded = i >= (1.0 - a[FLOODED]) * steps;
            boolean hot = !flooded && temperature > saturation;
            double k = flooded ? 380.0 : hot ? 330.0 : 450.0;
            double given = k / steps * (temperature - a[AIR]);
            heat += given;
            temperature -= flooded ? given / liquid : hot ? given / vapour : 0.0;
        }
        assertThat(heat).isCloseTo(out[CycleLoop.CONDENSER_HEAT], within(1e-4 * heat));
        assertThat(saturation - temperature).isCloseTo(out[CycleLoop.SUBCOOLING], within(1e-3));
    }

    /** An orifice floods the condenser just so far that its own flow is the compressor's. */
    @ParameterizedTest
    @EnumSource
    void orificeBalancesTheCompressor(Refrigerant r) {
        CycleLoop loop = new CycleLoop(r, Compressor.fixed(150e-6, 1.0));
        double[] a = usual();
        double[] out = run(loop, a);
        double saturated = new Orifice(1e-6, 0.02).flow(a[HIGH], a[LOW], out[CycleLoop.HIGH_LIQUID_DENSITY], 0.0);
        double area = 1e-6 * out[CycleLoop.MASS_FLOW] / saturated;
        Orifice small = new Orifice(0.9 * area, 0.02);
        a[FLOODED] = small.liquidShare(Charge.RIGHT, out, 380.0, a[AIR]);
        double subcooling = run(loop, a)[CycleLoop.SUBCOOLING];
        assertThat(small.flow(a[HIGH], a[LOW], out[CycleLoop.HIGH_LIQUID_DENSITY], subcooling))
                .isCloseTo(out[CycleLoop.MASS_FLOW], within(1e-9));
        assertThat(new Orifice(1.1 * area, 0.02).liquidShare(Charge.RIGHT, out, 380.0, a[AIR]))
                .isZero();
        assertThat(small.liquidShare(Charge.LOW, out, 380.0, a[AIR])).isZero();
        assertThat(small.flow(5e5, 5e5, 1000.0, 0.0)).isZero();
        assertThat(small.flow(4e5, 5e5, 1000.0, 0.0)).isNegative();
    }
}
