package hotday.study.design;

import hotday.vehicle.controller.DemandCurve;
import hotday.vehicle.controller.Schedule;

/** What a schedule asks for where nothing moves, with readings that are not in steps: steps 3 to 5 of docs/controller.md. */
final class Wish {
    private Wish() {}

    /** Share of full speed that a running fan is given, its least speed included. */
    static double running(Schedule schedule, Calm at) {
        return Math.max(of(schedule, at, true), schedule.switching().least()) / DemandCurve.FULL;
    }

    /**
     * 0.01 %.
     *
     * @param on whether curves hold on until their off point, or have still to come in
     */
    static double of(Schedule schedule, Calm at, boolean on) {
        double wish = Math.max(
                curve(schedule.coolant(), at.coolantRead(), on), curve(schedule.gearbox(), at.gearboxRead(), on));
        if (at.conditioned()) {
            wish = Math.max(wish, curve(schedule.airConditioning(), at.headRead(), on));
        }
        wish = Math.max(wish, curve(schedule.chargeAir(), at.chargeRead(), on));
        if (at.coolantRead() < schedule.allowance().hottest()) {
            wish = Math.max(0.0, wish - schedule.allowance().demand().between(at.speedRead()));
        }
        Schedule.Floor floor = schedule.floor();
        boolean slow = at.speedRead() < floor.below();
        return slow && at.coolantRead() >= floor.coolant() ? Math.max(wish, floor.demand()) : wish;
    }

    private static double curve(Schedule.Curve curve, double at, boolean on) {
        boolean latched = on ? at > curve.off() : at >= curve.on();
        return latched ? curve.demand().between(at) : 0.0;
    }
}
