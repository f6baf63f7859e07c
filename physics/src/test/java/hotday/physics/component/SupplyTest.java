package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import hotday.physics.WorkedProblem;
import java.lang.management.ManagementFactory;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Bus voltage: the worked supply, balances, and no jumps between the states. */
class SupplyTest {
    private static final double RPM = Math.PI / 30.0;
    private static final double RELATIVE = 1e-9;
    private static final double REGULATED = 13.9;

    private final double[] out = new double[Supply.SIZE];

    private static Supply supply() {
        return new Supply(REGULATED, new Battery(12.6, 0.008, 80 * 3600.0));
    }

    private static FanDrive fan(double watts) {
        return new FanDrive(watts, 12, 58, 9.0, 10.5, new Cable(1.91e-3, 6).resistance(353.15));
    }

    private Supply.State solve(double capacity, double conductance, double current, FanDrive fan, double ratio) {
        return supply().solve(capacity, conductance, current, fan, ratio, out);
    }

    @Test
    void workedSupply() {
        WorkedProblem p = WorkedProblem.read("electrical");
        Alternator alternator = ElectricalParts.alternator(p);
        Battery battery = new Battery(p.in("V_oc"), p.in("R_b"), p.in("battery") * 3600);
        Supply supply = new Supply(p.in("V_reg"), battery);
        FanDrive fan = ElectricalParts.fan(p);
        int cases = 0;
        for (int speed : new int[] {555, 650, 750, 900, 1800}) {
            for (int temperature : new int[] {25, 95}) {
                for (double ratio : new double[] {0.0, 0.6, 1.0}) {
                    String name = "n_e=" + speed + " T_alt=" + temperature + "C s=" + ratio;
                    if (!p.has(name)) {
                        continue;
                    }
                    double capacity = alternator.capacity(speed * RPM, temperature + 273.15);
                    Supply.State state = supply.solve(capacity, p.in("G_R"), p.in("I_C"), fan, ratio, out);
                    same(capacity, p.out(name, "I_max"));
                    same(out[Supply.BUS], p.out(name, "V_bus"));
                    same(out[Supply.ALTERNATOR_CURRENT], p.out(name, "I_alt"));
                    same(out[Supply.BATTERY_CURRENT], p.out(name, "I_bat_out"));
                    same(out[Supply.FAN_CURRENT], p.out(name, "I_fan"));
                    same(
                            alternator.crankTorque(out[Supply.BUS], out[Supply.ALTERNATOR_CURRENT], speed * RPM),
                            p.out(name, "engine_torque"));
                    assertThat(words(state))
                            .isEqualTo(p.output(name).required("state").asString());
                    minutes(battery, p.output(name));
                    cases++;
                }
            }
        }
        assertThat(cases).isEqualTo(18);
    }

    private void minutes(Battery battery, JsonNode expected) {
        double minutes = battery.timeToUse(0.1, out[Supply.BATTERY_CURRENT]) / 60;
        double published = expected.required("minutes_to_10%").asDouble();
        if (published < 0) {
            assertThat(minutes).isInfinite();
        } else {
            same(minutes, published);
        }
    }

    private static String words(Supply.State state) {
        return state == Supply.State.DISCHARGING
                ? "battery discharging"
                : state.name().toLowerCase(java.util.Locale.ROOT);
    }

    /** The file carries ten digits. */
    private static void same(double ours, double published) {
        assertThat(ours).isCloseTo(published, within(Math.abs(published) * RELATIVE));
    }

    /** Closed form: without a fan the battery feeds a divider. 22 A + 2.1 A/V, no alternator: V = (12.6 - 0.008 x 22) / (1 + 0.008 x 2.1). */
    @Test
    void withoutAFanADivider() {
        assertThat(solve(0, 2.1, 22, fan(720), 0)).isEqualTo(Supply.State.DISCHARGING);
        assertThat(out[Supply.BUS]).isCloseTo((12.6 - 0.008 * 22) / (1 + 0.008 * 2.1), within(1e-12));
        assertThat(solve(50, 2.1, 22, fan(720), 0)).isEqualTo(Supply.State.SAGGING);
        assertThat(out[Supply.BUS]).isCloseTo(28 / 2.1, within(1e-12));
    }

    /** Idle balance of a planning sheet: 150 A x 0.40 = 60 A hot; 25 + 20 + 44 + 4 = 93 A; 33 A short, 11 Ah in 20 min (recomputed). */
    @Test
    void idleBalance() {
        solve(60, 0, 93, fan(720), 0);
        assertThat(out[Supply.BATTERY_CURRENT]).isCloseTo(33, within(1e-9));
        assertThat(supply().battery().timeToUse(11.0 / 80, 33)).isCloseTo(20 * 60, within(1e-9));
    }

    @Test
    void currentsBalanceForAnyLoad() {
        Random random = new Random(7);
        for (int i = 0; i < 100_000; i++) {
            double capacity = 160 * random.nextDouble();
            double conductance = 6 * random.nextDouble();
            double constant = 60 * random.nextDouble();
            FanDrive fan = fan(100 + 1400 * random.nextDouble());
            Supply.State state = solve(capacity, conductance, constant, fan, random.nextDouble());
            double loads = conductance * out[Supply.BUS] + constant + out[Supply.FAN_CURRENT];
            assertThat(out[Supply.ALTERNATOR_CURRENT] + out[Supply.BATTERY_CURRENT])
                    .as("%s", state)
                    .isCloseTo(loads, within(1e-9));
            assertThat(out[Supply.ALTERNATOR_CURRENT]).isLessThanOrEqualTo(capacity);
            assertThat(out[Supply.BATTERY_CURRENT]).isNotNegative();
            assertThat(out[Supply.BUS]).isBetween(8.0, REGULATED);
        }
    }

    /** A milliampere less from the alternator never costs more than a millivolt, whatever the loads. */
    @Test
    void noJumps() {
        for (double watts : new double[] {200, 732, 1500}) {
            FanDrive fan = fan(watts);
            for (double ratio : new double[] {0.0, 0.01, 0.8, 1.0}) {
                for (double conductance : new double[] {0.5, 2.1, 2.4, 4.0}) {
                    double before = Double.NaN;
                    for (int milliamperes = 20_000; milliamperes < 140_000; milliamperes++) {
                        solve(milliamperes / 1000.0, conductance, 22, fan, ratio);
                        if (Math.abs(out[Supply.BUS] - before) > 1e-3) {
                            throw new AssertionError(watts + " W at " + ratio + ", " + conductance + " A/V, "
                                    + milliamperes + " mA: " + before + " V to " + out[Supply.BUS] + " V");
                        }
                        before = out[Supply.BUS];
                    }
                }
            }
        }
    }

    @Test
    void allocatesNothing() {
        FanDrive fan = fan(720);
        Supply supply = supply();
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long spent = Long.MAX_VALUE;
        for (int round = 0; round < 10; round++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            for (int i = 0; i < 10_000; i++) {
                supply.solve(50 + 0.005 * i, 2.1, 22, fan, 0.9, out);
            }
            spent = Math.min(spent, threads.getCurrentThreadAllocatedBytes() - before);
        }
        assertThat(spent).isLessThan(1000);
    }

    @Test
    void batteryAndBadValues() {
        Battery battery = new Battery(12.6, 0.008, 80 * 3600.0);
        assertThat(battery.chargeRate(80) * 3600).isCloseTo(-1.0, within(1e-12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Supply(12.5, battery))
                .withMessageContaining("12.5 V must be above that of the battery at rest, 12.6 V");
        assertThatIllegalArgumentException().isThrownBy(() -> new Battery(0, 0.01, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Battery(12, 0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Battery(12, 0.01, 0));
    }
}
