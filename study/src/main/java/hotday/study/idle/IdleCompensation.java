package hotday.study.idle;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.physics.component.WillansLine;
import hotday.vehicle.cases.Case;
import hotday.vehicle.idle.FeedForward;
import hotday.vehicle.idle.FeedForwardTable;
import hotday.vehicle.idle.IdleLoad;
import hotday.vehicle.idle.IdleSettings;
import hotday.vehicle.idle.IdleStudy;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;

/**
 * The announcement of a build's compressor over head pressure and engine speed.
 *
 * @param cells by head pressure, then engine speed, both rising
 * @param findings what the table cannot hold, and what to look at
 */
public record IdleCompensation(VehicleSpec vehicle, List<IdleCell> cells, List<Finding> findings) {
    private static final double RPM = Math.PI / 30.0;
    private static final double BAR = 1e5;
    private static final double[] HEADS = {8, 10, 12, 14, 16, 18, 20, 22.5, 25};
    /** Engine speeds against that of the sheet, rpm. */
    private static final double[] AROUND = {-50, 0, 100, 200};
    /** s; common practice, no source. */
    private static final double CLUTCH = 0.04;
    /** What a table of a controller resolves; common practice, no source. */
    private static final double TORQUE_STEP = 0.5; // N m

    private static final double LEAD_STEP = 0.01; // s
    private static final double SHARE_STEP = 0.005;
    private static final double LEAD_WRONG = 0.1; // s

    public IdleCompensation {
        cells = List.copyOf(cells);
        findings = List.copyOf(findings);
    }

    /** Whether every cell keeps the speed. */
    public boolean holds() {
        return cells.stream().allMatch(IdleCell::holds);
    }

    /** Engine speeds of the table, rad/s. */
    public List<Double> speeds() {
        return cells.stream().map(IdleCell::speed).distinct().toList();
    }

    /** Whether torque comes by air, and not by fuel alone. */
    public boolean byAir() {
        return vehicle.engine().fuel() == VehicleSpec.Fuel.PETROL;
    }

    /**
     * Works the table out, on all processors; the same numbers whatever their count. Refuses a build without a compressor on the belt.
     *
     * @param sheet for messages
     * @param cases among them {@code hot-idle}
     * @param progress told the share done, 0..1
     */
    public static IdleCompensation of(VehicleSpec spec, Place sheet, List<Case> cases, DoubleConsumer progress) {
        requireClutch(spec, sheet);
        ClutchLoad load = ClutchLoad.of(spec, idle(cases));
        List<Asked> asked = new ArrayList<>();
        for (double head : HEADS) {
            for (double around : AROUND) {
                double speed = spec.engine().idleSpeed() + around * RPM;
                asked.add(new Asked(head * BAR, speed, load.at(head * BAR, speed)));
            }
        }
        AtomicInteger done = new AtomicInteger();
        List<IdleCell> cells = asked.stream()
                .parallel()
                .map(a -> {
                    IdleCell cell = cell(spec, a);
                    progress.accept((double) done.incrementAndGet() / asked.size());
                    return cell;
                })
                .toList();
        return new IdleCompensation(spec, cells, IdleFindings.of(cells));
    }

    private record Asked(double head, double speed, ClutchLoad.At load) {}

    private static void requireClutch(VehicleSpec spec, Place sheet) {
        if (spec.airConditioning().isEmpty()) {
            throw InputException.at(
                    sheet, "idle-no-compressor", "has no 'air_conditioning' block: there is no compressor to announce");
        }
        if (spec.airConditioning().get().circuit().electricSpeed() > 0.0) {
            throw InputException.at(
                    sheet,
                    "idle-electric-compressor",
                    "has a compressor with its own motor ('air_conditioning.electric_speed'): nothing loads the belt when it starts");
        }
    }

    private static Case idle(List<Case> cases) {
        return cases.stream()
                .filter(c -> c.id().equals("hot-idle"))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no case hot-idle"));
    }

    private static IdleCell cell(VehicleSpec spec, Asked asked) {
        IdleSettings settings = settings(spec, asked.speed());
        IdleLoad load = new IdleLoad(asked.load().torque(), CLUTCH);
        FeedForward best = FeedForwardTable.best(settings, load);
        FeedForward held = new FeedForward(rounded(best.torque(), TORQUE_STEP), rounded(best.lead(), LEAD_STEP));
        return new IdleCell(
                asked.head(),
                asked.load().suction(),
                settings,
                load.torque(),
                held,
                rounded(share(spec, held.torque(), asked.speed()), SHARE_STEP),
                IdleStudy.run(settings, load, FeedForward.NONE),
                IdleStudy.run(settings, load, held),
                IdleStudy.run(settings, load, shifted(held, -LEAD_WRONG)),
                IdleStudy.run(settings, load, shifted(held, LEAD_WRONG)));
    }

    private static IdleSettings settings(VehicleSpec spec, double speed) {
        double displacement = spec.engine().displacement();
        return spec.engine().fuel() == VehicleSpec.Fuel.DIESEL
                ? IdleSettings.diesel(displacement, speed)
                : IdleSettings.of(displacement, speed);
    }

    private static FeedForward shifted(FeedForward forward, double by) {
        return new FeedForward(forward.torque(), Math.max(-1.0, Math.min(1.0, forward.lead() + by)));
    }

    private static double rounded(double value, double step) {
        return step * Math.rint(value / step);
    }

    /** Fuel that a torque takes over what the idling engine burns in gear with its base load; of a throttled engine the air grows with it. */
    private static double share(VehicleSpec spec, double torque, double speed) {
        WillansLine line = spec.engine().fuelLine();
        VehicleSpec.Electrical e = spec.electrical();
        double stall = spec.gearbox().converter().stallPower(speed);
        double drag = stall > 0.0 ? stall : spec.gearbox().idleDragPower();
        double brake = drag + e.alternator().shaftPower(e.regulated(), e.baseCurrent());
        double idle = line.fuelPower(brake, speed);
        return line.fuelPower(brake + torque * speed, speed) / idle - 1.0;
    }
}
