package hotday.physics.exchanger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** How much the heat of a core under uneven air changes when its tiles are cut; the table of docs/physics/exchangers.md. */
class RefinementTest {
    /** Of the heat, between a grid and the next finer one: a tenth of the scatter of the air-side relation. */
    private static final double CHANGE = 0.01;

    private static final int[] FINER = {1, 2, 4};

    private record Field(FaceGrid face, double[] logs, double[] rates) {}

    /** Twice as quick on the left and below as on the right and above, less than half behind a bumper bar. */
    private static Field field(int times) {
        FaceGrid face = FaceGrid.even(8 * times, 12 * times, 0.4, 0.6);
        double[] flux = new double[face.tiles()];
        double[] rates = new double[flux.length];
        for (int t = 0; t < flux.length; t++) {
            double x = (t % face.columns() + 0.5) / face.columns();
            double y = (t / face.columns() + 0.5) / face.rows();
            double bar = y > 0.375 && y < 0.625 ? 0.45 : 1.0;
            flux[t] = 3.4 * bar * (1.0 + 0.35 * Math.cos(Math.PI * x)) * (0.7 + 0.6 * y * y);
            rates[t] = 1007 * flux[t] * face.area(t);
        }
        double[] logs = new double[flux.length];
        AirSide.logarithms(flux, logs);
        return new Field(face, logs, rates);
    }

    private static double liquid(Field f, Passes passes, TileLaw law, double rate) {
        LiquidMarch march = new LiquidMarch(passes, law);
        new AirSide(8000, 3.5, 0.5).fill(passes, f.logs(), march.airConductance());
        passes.spread(3800, march.liquidConductance());
        march.flow(rate, 375);
        march.march(f.rates(), even(f, 308));
        return march.heat();
    }

    private static double[] even(Field f, double temperature) {
        double[] air = new double[f.rates().length];
        Arrays.fill(air, temperature);
        return air;
    }

    private static double refrigerant(Field f, double enthalpy, double airTemperature) {
        RefrigerantStream s = new RefrigerantStream(11);
        s.massFlow = 0.03;
        s.enthalpy = enthalpy;
        s.saturationTemperature = 325;
        s.liquidEnthalpy = 273e3;
        s.vapourEnthalpy = 424e3;
        s.liquidHeat = 1580;
        s.vapourHeat = 1250;
        s.liquidConductance = 2500;
        s.vapourConductance = 2000;
        for (int i = 0; i < 11; i++) {
            s.twoPhaseConductance[i] = 2500 + 6000 * s.quality(i);
        }
        Passes passes = Passes.multiPass(f.face().whole(), Passes.Side.LEFT, 0.5, 0.25, 0.25);
        RefrigerantMarch march = new RefrigerantMarch(passes, s);
        new AirSide(6000, 3.5, 0.5).fill(passes, f.logs(), march.airConductance());
        march.march(f.rates(), even(f, airTemperature));
        return march.heat();
    }

    @Test
    void heatHardlyMovesWithTheGrid() {
        StringBuilder table = new StringBuilder("| core | 12 x 8 | 24 x 16 | 48 x 32 |\n");
        row(table, "cross-flow", f -> liquid(f, across(f), TileLaw.TUBE_MIXED, 7000));
        row(table, "cross-flow, little coolant", f -> liquid(f, across(f), TileLaw.TUBE_MIXED, 900));
        row(table, "cross-flow, exact both unmixed", f -> liquid(f, across(f), TileLaw.BOTH_UNMIXED, 7000));
        row(table, "down-flow", f -> liquid(f, Passes.downFlow(f.face().whole()), TileLaw.TUBE_MIXED, 7000));
        row(table, "two passes", f -> liquid(f, twice(f), TileLaw.TUBE_MIXED, 7000));
        row(table, "condenser, three passes", f -> refrigerant(f, 450e3, 308));
        row(table, "evaporating, three passes", f -> refrigerant(f, 300e3, 337));
        System.out.print(table);
    }

    private static Passes across(Field f) {
        return Passes.crossFlow(f.face().whole(), Passes.Side.LEFT);
    }

    private static Passes twice(Field f) {
        return Passes.multiPass(f.face().whole(), Passes.Side.LEFT, 0.5, 0.5);
    }

    private static void row(StringBuilder table, String name, ToDoubleFunction<Field> heat) {
        table.append("| ").append(name);
        double before = Double.NaN;
        for (int times : FINER) {
            double now = heat.applyAsDouble(field(times));
            double change = now / before - 1.0;
            table.append(String.format(Locale.ROOT, " | %.1f W", now));
            if (times > 1) {
                table.append(String.format(Locale.ROOT, " (%+.4f %%)", 100 * change));
                assertThat(Math.abs(change)).as(name).isLessThan(CHANGE);
            }
            before = now;
        }
        table.append(" |\n");
    }
}
