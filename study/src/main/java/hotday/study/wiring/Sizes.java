package hotday.study.wiring;

import hotday.physics.component.Conductor;
import hotday.vehicle.spec.Wiring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Cable sizes one can buy, to say which would do. */
final class Sizes {
    private static final double[] METRIC = {0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120};
    private static final int[] GAUGES = {20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3};

    private Sizes() {}

    private record Size(String text, Conductor conductor) {}

    private static List<Size> of(Wiring.Series series) {
        List<Size> all = new ArrayList<>();
        switch (series) {
            case IEC -> {
                for (double a : METRIC) {
                    all.add(new Size(text(a), Conductor.iec(1e-6 * a)));
                }
            }
            case ISO -> {
                for (double a : METRIC) {
                    all.add(new Size(text(a), Conductor.iso(1e-6 * a)));
                }
            }
            case AWG -> {
                for (int g : GAUGES) {
                    all.add(new Size(text(g) + " AWG", Conductor.awg(g)));
                }
            }
            case SAE -> {
                for (int g : GAUGES) {
                    all.add(new Size(text(g) + " SAE", Conductor.sae(g)));
                }
            }
        }
        return all;
    }

    private static String text(double squareMillimetres) {
        String number = Double.toString(squareMillimetres).replaceAll("\\.0$", "");
        return number + " mm2";
    }

    private static String text(int gauge) {
        return gauge > 0 ? Integer.toString(gauge) : (1 - gauge) + "/0";
    }

    /** The thinnest size of the feed's list that, taken for all cables, does; none when none does. */
    static Optional<String> enough(Wiring wiring, Predicate<Wiring> does) {
        return of(wiring.feed().series()).stream()
                .filter(size -> does.test(with(wiring, size)))
                .map(Size::text)
                .findFirst();
    }

    private static Wiring with(Wiring w, Size size) {
        return new Wiring(
                with(w.feed(), size),
                w.back().map(b -> with(b, size)),
                w.groundResistance(),
                w.surroundings(),
                w.insulation(),
                w.bundled(),
                w.fuse(),
                w.drive());
    }

    private static Wiring.Run with(Wiring.Run run, Size size) {
        return new Wiring.Run(run.series(), size.text(), size.conductor(), run.length());
    }
}
