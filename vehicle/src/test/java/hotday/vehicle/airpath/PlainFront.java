package hotday.vehicle.airpath;

import hotday.physics.component.FanCurve;
import hotday.vehicle.airpath.Face.Core;
import hotday.vehicle.airpath.Face.Disc;
import hotday.vehicle.airpath.Face.ElectricFan;
import hotday.vehicle.airpath.Face.Exit;
import hotday.vehicle.airpath.Face.Fan;
import hotday.vehicle.airpath.Face.Flaps;
import hotday.vehicle.airpath.Face.Inlet;
import hotday.vehicle.airpath.Face.Opening;
import hotday.vehicle.airpath.Face.Shroud;
import java.util.List;
import java.util.stream.Stream;

/** An invented front of 0.72 x 0.48 m from which a test changes one thing. */
record PlainFront(List<Core> cores, Shroud shroud, List<Fan> fans, Flaps flaps, double draught, int columns, int rows) {
    static final Rectangle WHOLE = new Rectangle(0.0, 0.0, 0.72, 0.48);
    static final FanCurve CURVE = new FanCurve(320.0, -50.0, -100.0, 60.0, 90.0, 180.0, -30.0, 1.2);
    static final Core CONDENSER = new Core("condenser", 1, new Rectangle(0.0, 0.0, 0.72, 0.36), 5.0, 4.5);
    static final Core OIL_STRIP = new Core("oil strip", 1, new Rectangle(0.0, 0.36, 0.72, 0.06), 5.0, 4.5);
    static final Core RADIATOR = new Core("radiator", 2, WHOLE, 8.0, 6.0);

    static PlainFront usual() {
        return new PlainFront(
                List.of(
                        new Core("gearbox cooler", 0, new Rectangle(0.06, 0.30, 0.24, 0.18), 6.0, 7.0),
                        CONDENSER,
                        OIL_STRIP,
                        RADIATOR),
                new Shroud(WHOLE, 0.0),
                List.of(puller(CURVE, 0.36)),
                Flaps.NONE,
                0.0,
                12,
                8);
    }

    static Fan puller(FanCurve curve, double x) {
        return new ElectricFan(curve, new Disc(x, 0.24, 0.3), false);
    }

    PlainFront with(List<Core> other) {
        return new PlainFront(other, shroud, fans, flaps, draught, columns, rows);
    }

    PlainFront with(Shroud other) {
        return new PlainFront(cores, other, fans, flaps, draught, columns, rows);
    }

    PlainFront with(Fan... other) {
        return new PlainFront(cores, shroud, List.of(other), flaps, draught, columns, rows);
    }

    PlainFront with(Flaps other) {
        return new PlainFront(cores, shroud, fans, other, draught, columns, rows);
    }

    PlainFront draught(double height) {
        return new PlainFront(cores, shroud, fans, flaps, height, columns, rows);
    }

    PlainFront tiles(int across, int down) {
        return new PlainFront(cores, shroud, fans, flaps, draught, across, down);
    }

    Face face() {
        Rectangle upper = new Rectangle(0.0, 0.0, 0.72, 0.18);
        Rectangle lower = new Rectangle(0.0, 0.30, 0.72, 0.18);
        Inlet open = new Inlet(0.7, 2.5);
        List<Rectangle> edges = Stream.concat(cores.stream().map(Core::place), Stream.of(upper, lower, shroud.place()))
                .toList();
        return new Face(
                Grid.through(WHOLE.width(), WHOLE.height(), columns, rows, edges),
                cores,
                List.of(new Opening(upper, open), new Opening(lower, open)),
                new Inlet(0.2, 20.0),
                shroud,
                fans,
                flaps,
                new Exit(0.17, 1.2),
                -0.12,
                draught,
                Sealing.FAIR);
    }

    /** Solved at 38 degC and sea level, all fans at one speed ratio. */
    TileFlow flow(double kmh, double ratio) {
        return flow(kmh, ratio, 101325.0, 311.15);
    }

    TileFlow flow(double kmh, double ratio, double pressure, double rear) {
        TilePath path = TilePath.compile(face());
        TileFlow flow = path.start();
        flow.air(kmh / 3.6, 311.15, pressure, rear);
        for (int fan = 0; fan < fans.size(); fan++) {
            flow.fan(fan, ratio);
        }
        path.solve(flow);
        return flow;
    }
}
