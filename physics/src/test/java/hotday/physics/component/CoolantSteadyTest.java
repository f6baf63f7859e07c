package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.core.solve.Bracket;
import hotday.physics.WorkedProblem;
import hotday.physics.fluid.Air;
import hotday.physics.fluid.Boiling;
import hotday.physics.transfer.Arrangement;
import hotday.physics.transfer.EngineHeat;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/**
 * Engine, thermostat, pump, core and boiling together: every steady state and ambient ceiling of an invented vehicle, calculated
 * independently. The approximate cross-flow formula is the one of that problem.
 */
class CoolantSteadyTest {
    /** K: ten printed digits. */
    private static final double TEMPERATURE = 2e-6;

    private static final double SHARE = 1e-8;
    private static final double PSI = 6894.757293168;
    private static final double CEILING_COOLANT = 388.15;

    /** One operating point of the problem. */
    private static final class Car {
        private final WorkedProblem p = WorkedProblem.read("coolant-steady");
        private final WaxThermostat stat = new WaxThermostat(p.in("T_open"), p.in("T_full"), 0, 0);
        private final Core core = new Core(p.in("G_a0"), p.in("m_a0"), 0.5, p.in("G_c0"), p.in("m_c0"), 0.6);
        private final double speed;
        private final double gasFlow;
        private final double airFlow;
        private final double pumpFlow;
        private final double pressure;
        private final double condenser;

        Car(int mode, double altitude, double condenser) {
            JsonNode m = p.input("modes [name, n rpm, m_t kg/s, V_air m3/s]").get(mode);
            double rpm = m.get(1).asDouble();
            speed = rpm * Math.PI / 30;
            gasFlow = m.get(2).asDouble();
            airFlow = m.get(3).asDouble();
            pumpFlow = new Pump(p.in("c_p") * 1000, 1000 * Math.PI / 30).flow(speed) * p.in("rho_c");
            pressure = Air.isaPressure(altitude);
            this.condenser = condenser;
        }

        double heat(double coolant) {
            double conductance =
                    EngineHeat.conductance(gasFlow, p.in("B"), p.input("n_cyl").asInt(), p.in("k_g"), p.in("mu_g"));
            double friction = EngineHeat.frictionMeanPressure(p.in("f0"), p.in("f1"), p.in("f2"), speed);
            return conductance * (p.in("T_g") - coolant)
                    + p.in("share") * EngineHeat.power(friction, p.in("V_d"), speed);
        }

        Core.Outlet radiator(double coolant, double ambient) {
            double air = Air.density(pressure, ambient) * airFlow;
            double face = ambient + condenser / (air * p.in("cp_a"));
            return core.outlet(
                    Arrangement.CROSS_BOTH_UNMIXED_APPROXIMATE,
                    new Core.Inlet(air, p.in("cp_a"), face),
                    new Core.Inlet(stat.opening(coolant) * pumpFlow, p.in("cp_c"), coolant));
        }

        double steady(double ambient) {
            return Bracket.root(t -> heat(t) - radiator(t, ambient).heat(), p.in("T_open"), 600, 1e-12, 200)
                    .value();
        }

        double ceiling() {
            double heat = heat(CEILING_COOLANT);
            return Bracket.root(a -> radiator(CEILING_COOLANT, a).heat() - heat, 250, 388, 1e-12, 200)
                    .value();
        }

        double boiling() {
            return Boiling.ofMoleFraction(pressure + p.in("cap") * PSI, 0.7555);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0, idle, 0, 0", "0, idle, 0, 10000", "0, idle, 2000, 0", "0, idle, 2000, 10000",
        "1, cruise, 0, 0", "1, cruise, 0, 10000", "1, cruise, 2000, 0", "1, cruise, 2000, 10000",
        "2, climb, 0, 0", "2, climb, 0, 10000", "2, climb, 2000, 0", "2, climb, 2000, 10000"
    })
    void steadyStatesAndCeiling(int mode, String name, String altitude, String condenser) {
        Car car = new Car(mode, Double.parseDouble(altitude), Double.parseDouble(condenser));
        String place = " h=" + altitude + " Q_cond=" + condenser;
        for (String ambient : new String[] {"283.15", "293.15", "308.15", "318.15"}) {
            String row = name + place + " T_amb=" + ambient;
            double t = car.steady(Double.parseDouble(ambient));
            Core.Outlet out = car.radiator(t, Double.parseDouble(ambient));
            double back = t - out.heat() / (car.pumpFlow * car.p.in("cp_c"));
            assertThat(t).as(row).isCloseTo(car.p.out(row, "T_e"), within(TEMPERATURE));
            assertThat(car.stat.opening(t)).as(row).isCloseTo(car.p.out(row, "x"), within(SHARE));
            assertThat(out.heat()).as(row).isCloseTo(car.p.out(row, "Q"), within(SHARE * out.heat()));
            assertThat(out.coolant()).as(row).isCloseTo(car.p.out(row, "T_rad_out"), within(TEMPERATURE));
            assertThat(back).as(row).isCloseTo(car.p.out(row, "T_engine_in"), within(TEMPERATURE));
            assertThat(car.boiling() - t).as(row).isCloseTo(car.p.out(row, "boil_margin"), within(TEMPERATURE));
        }
        double ceiling = car.p.output("ambient ceiling " + name + place).asDouble();
        assertThat(car.ceiling()).isCloseTo(ceiling, within(TEMPERATURE));
    }
}
