package hotday.study.predict;

import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Ambient ceilings over road speed and grade, each a steady case with the day and the treatment of the cabin of a given
 * one. Speeds m/s, grades rise over run, ceilings K.
 *
 * @param like the case whose day and cabin it uses
 * @param points by grade, then speed
 */
public record RoadMap(Case like, List<Double> speeds, List<Double> grades, List<Point> points) {
    private static final double KMH = 1.0 / 3.6;
    private static final double[] SPEEDS = {5, 15, 25, 35, 50, 65, 80, 95, 110, 130};
    private static final double[] GRADES = {0.0, 0.02, 0.04, 0.06, 0.08, 0.10, 0.12};

    public RoadMap {
        speeds = List.copyOf(speeds);
        grades = List.copyOf(grades);
        points = List.copyOf(points);
    }

    /**
     * One square of the map.
     *
     * @param ambient ceiling, K; NaN where the engine cannot hold that speed
     * @param binding what gives way first; empty where nothing does within the search or the engine cannot
     */
    public record Point(double speed, double grade, double ambient, Ceiling.Reach reach, Optional<Limit> binding) {
        /** Whether the engine has the power. */
        public boolean reachable() {
            return !Double.isNaN(ambient);
        }
    }

    /** The case whose day and cabin a map uses: the loaded climb where there is one. */
    public static Case like(List<Case> cases) {
        return cases.stream()
                .filter(c -> c.id().equals("loaded-climb"))
                .findFirst()
                .orElse(cases.get(0));
    }

    /**
     * Works the map out, on all processors; same numbers whatever their count.
     *
     * @param cancelled asked at every square; then {@link CancellationException}
     */
    public static RoadMap of(VehicleSpec spec, Plant plant, Case like, BooleanSupplier cancelled) {
        List<Double> speeds = new ArrayList<>();
        List<Double> grades = new ArrayList<>();
        for (double v : SPEEDS) {
            speeds.add(v * KMH);
        }
        for (double g : GRADES) {
            grades.add(g);
        }
        List<Point> points = IntStream.range(0, speeds.size() * grades.size())
                .parallel()
                .mapToObj(i -> wanted(cancelled, i))
                .map(i -> point(spec, plant, like, speeds.get(i % speeds.size()), grades.get(i / speeds.size())))
                .toList();
        return new RoadMap(like, speeds, grades, points);
    }

    private static int wanted(BooleanSupplier cancelled, int square) {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
        return square;
    }

    private static Point point(VehicleSpec spec, Plant plant, Case like, double speed, double grade) {
        Case kase = like.at(speed, grade);
        Optional<AmbientCeiling.Found> found = new AmbientCeiling(spec).first(plant, kase, spec.designAmbient());
        return found.map(f -> new Point(
                        speed,
                        grade,
                        f.ambient(),
                        f.reach(),
                        f.reach() == Ceiling.Reach.ABOVE_RANGE ? Optional.empty() : Optional.of(f.binding())))
                .orElse(new Point(speed, grade, Double.NaN, Ceiling.Reach.BELOW_RANGE, Optional.empty()));
    }

    /** The map as text, one line a point, degC. */
    public String csv() {
        StringBuilder out = new StringBuilder("speed_km_h,grade_percent,ambient_ceiling_degC,reach,binding_limit\n");
        for (Point p : points) {
            out.append(String.format(
                    Locale.ROOT,
                    "%.0f,%.0f,%s,%s,%s%n",
                    p.speed() / KMH,
                    100.0 * p.grade(),
                    p.reachable() ? String.format(Locale.ROOT, "%.2f", p.ambient() - 273.15) : "",
                    p.reachable() ? p.reach().name().toLowerCase(Locale.ROOT) : "engine_has_not_the_power",
                    p.binding().map(Limit::id).orElse("")));
        }
        return out.toString().replace("\r\n", "\n");
    }
}
