package hotday.vehicle.airpath;

import hotday.physics.component.FanCurve;
import hotday.physics.fluid.Air;
import hotday.vehicle.airpath.Face.Core;
import hotday.vehicle.airpath.Face.Disc;
import hotday.vehicle.airpath.Face.ElectricFan;
import hotday.vehicle.airpath.Face.Exit;
import hotday.vehicle.airpath.Face.Fan;
import hotday.vehicle.airpath.Face.Flaps;
import hotday.vehicle.airpath.Face.Inlet;
import hotday.vehicle.airpath.Face.Opening;
import hotday.vehicle.airpath.Face.Shroud;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Faces and weather drawn at random from a seed, wider than any vehicle. */
final class RandomFace {
    private static final double WIDTH = 0.8;
    private static final double HEIGHT = 0.5;

    private final SplittableRandom random;

    RandomFace(SplittableRandom random) {
        this.random = random;
    }

    Face face() {
        List<Core> cores = new ArrayList<>();
        int depth = random.nextInt(5);
        for (int i = 0; i < depth; i++) {
            cores.add(new Core("core " + i, i, place(), sometimes(0.0, 12.0), sometimes(0.0, 10.0)));
        }
        List<Rectangle> edges = cores.stream().map(Core::place).toList();
        Grid grid = Grid.through(WIDTH, HEIGHT, 1 + random.nextInt(12), 1 + random.nextInt(8), edges);
        return new Face(
                grid,
                cores,
                List.of(new Opening(place(), inlet(0.3, 1.0)), new Opening(place(), inlet(0.0, 0.6))),
                inlet(-0.2, 0.3),
                new Shroud(place(), sometimes(0.0, 0.02)),
                fans(),
                new Flaps(sometimes(0.0, 0.06), 0.62, sometimes(0.0, 30.0)),
                new Exit(random.nextDouble(0.02, 0.5), random.nextDouble(0.5, 4.0)),
                random.nextDouble(-0.5, 0.2),
                sometimes(0.0, 1.0),
                Sealing.values()[random.nextInt(3)]);
    }

    private double sometimes(double usual, double most) {
        return random.nextInt(3) == 0 ? usual : random.nextDouble(usual, most);
    }

    private Rectangle place() {
        double width = random.nextDouble(0.3, 1.0) * WIDTH;
        double height = random.nextDouble(0.6, 1.0) * HEIGHT;
        return new Rectangle(
                random.nextDouble() * (WIDTH - width), random.nextDouble() * (HEIGHT - height), width, height);
    }

    private Inlet inlet(double least, double most) {
        return new Inlet(random.nextDouble(least, most), random.nextDouble(0.5, 20.0));
    }

    private List<Fan> fans() {
        int count = random.nextInt(3);
        List<Fan> fans = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Disc disc = new Disc(random.nextDouble(WIDTH), random.nextDouble(HEIGHT), random.nextDouble(0.05, 0.12));
            FanCurve curve = random.nextInt(4) == 0 && i > 0 ? fans.get(0).curve() : curve();
            fans.add(new ElectricFan(curve, disc, random.nextInt(3) == 0));
        }
        return fans;
    }

    private FanCurve curve() {
        double square = -random.nextDouble(20.0, 400.0);
        double linear = random.nextInt(3) == 0 ? random.nextDouble(300.0) : -sometimes(0.0, 200.0);
        return new FanCurve(
                random.nextDouble(500.0), linear, square, -square * sometimes(0.0, 1.0), 90.0, 180.0, -30.0, 1.2);
    }

    void weather(TileFlow flow, Face face) {
        double speed = random.nextInt(3) == 0 ? 0.0 : random.nextDouble(-15.0, 45.0);
        double ambient = random.nextDouble(243.15, 328.15);
        double rear = random.nextInt(3) == 0 ? ambient : random.nextDouble(250.0, 400.0);
        flow.air(speed, ambient, Air.isaPressure(sometimes(0.0, 4000.0)), rear);
        for (int fan = 0; fan < face.fans().size(); fan++) {
            flow.fan(fan, random.nextInt(3) == 0 ? 0.0 : random.nextInt(3) == 0 ? 1.0 : random.nextDouble(1.5));
        }
    }

    double[] temperatures(Face face) {
        return random.doubles((long) face.grid().tiles() * face.cores().size(), 250.0, 420.0)
                .toArray();
    }
}
