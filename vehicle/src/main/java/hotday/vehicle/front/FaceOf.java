package hotday.vehicle.front;

import hotday.physics.component.FanCurve;
import hotday.vehicle.airpath.Face;
import hotday.vehicle.airpath.Grid;
import hotday.vehicle.airpath.Rectangle;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.PlacedCore;
import java.util.ArrayList;
import java.util.List;

/** From a vehicle's sheet to the face that the air meets. */
final class FaceOf {
    private static final int COLUMNS = 12;
    private static final int ROWS = 8;
    private static final double REFERENCE_DENSITY = 1.2;
    /** Grille in front of an open tile, on face speed; of the exit loss of the sheet, which holds all of them. From memory. */
    private static final double GRILLE = 2.5;

    private static final double BUMPER_RECOVERY = 0.2;
    private static final double BUMPER_LOSS = 20.0;
    private static final double FLAP_DISCHARGE = 0.62;

    private FaceOf() {}

    static Face face(VehicleSpec spec) {
        VehicleSpec.Stack stack = spec.stack();
        VehicleSpec.FrontEnd front = spec.frontEnd();
        List<Rectangle> edges = new ArrayList<>(stack.openings());
        stack.cores().forEach(core -> edges.add(core.place()));
        edges.add(stack.shroud());
        Grid grid = Grid.through(stack.width(), stack.height(), COLUMNS, ROWS, edges);
        Face.Inlet open = new Face.Inlet(front.ramRecovery(), GRILLE);
        Face.Inlet blanked = new Face.Inlet(Math.min(BUMPER_RECOVERY, front.ramRecovery()), BUMPER_LOSS);
        return new Face(
                grid,
                cores(stack),
                stack.openings().stream()
                        .map(place -> new Face.Opening(place, open))
                        .toList(),
                blanked,
                new Face.Shroud(stack.shroud(), stack.shroudGap()),
                fans(spec),
                stack.flapArea() > 0.0
                        ? new Face.Flaps(stack.flapArea(), FLAP_DISCHARGE, stack.flapCracking())
                        : Face.Flaps.NONE,
                new Face.Exit(stack.width() * stack.height(), Math.max(0.5, front.exitLoss() - GRILLE)),
                front.basePressure(),
                front.draughtHeight(),
                front.sealing());
    }

    /** Depth numbers without gaps, so that the radiator's is a small one too. */
    private static List<Face.Core> cores(VehicleSpec.Stack stack) {
        List<Face.Core> cores = new ArrayList<>();
        for (PlacedCore core : stack.cores()) {
            int depth = (int) stack.cores().stream()
                    .mapToInt(PlacedCore::layer)
                    .filter(layer -> layer < core.layer())
                    .distinct()
                    .count();
            cores.add(new Face.Core(
                    core.kind().title(), depth, core.place(), core.resistanceLinear(), core.resistanceSquare()));
        }
        return cores;
    }

    private static List<Face.Fan> fans(VehicleSpec spec) {
        VehicleSpec.Stack stack = spec.stack();
        List<Face.Fan> fans = new ArrayList<>();
        Rectangle shroud = stack.shroud();
        for (int i = 0; i < stack.fans(); i++) {
            double x = shroud.left() + shroud.width() * (i + 0.5) / stack.fans();
            double y = shroud.top() + 0.5 * shroud.height();
            fans.add(new Face.ElectricFan(
                    curve(spec.fan(), stack.fans()), new Face.Disc(x, y, stack.fanDiameter()), false));
        }
        return fans;
    }

    /** The sheet's curve is that of all fans together: each moves its part of the flow. Shaft power grows with the flow from two thirds. */
    private static FanCurve curve(VehicleSpec.Fan fan, int number) {
        double free = Math.sqrt(fan.stallPressure() / -fan.square());
        double power = fan.shaftPower() / number;
        return new FanCurve(
                fan.stallPressure(),
                fan.linear() * number,
                fan.square() * number * number,
                Math.min(fan.windmill(), -fan.square()) * number * number,
                power * 2.0 / 3.0,
                power / 3.0 / (free / number),
                0.0,
                REFERENCE_DENSITY);
    }
}
