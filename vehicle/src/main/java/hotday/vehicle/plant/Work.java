package hotday.vehicle.plant;

import hotday.physics.component.Cabin;
import hotday.physics.component.Evaporator;
import hotday.physics.component.Supply;
import hotday.physics.cycle.CycleLoop;

/** Everything one evaluation of the plant writes down on its way; one a thread, made by {@link Plant#work()}. */
final class Work {
    final double[] w = new double[Output.COUNT];
    final double[] coupling = new double[EngineLoop.COUPLINGS];
    final double[] air;
    final double[] rate;
    final double[] lane;
    final double[] part;
    final double[] cycle = new double[CycleLoop.LENGTH];
    final double[] coil = new double[Evaporator.RESULTS];
    final double[] cabinIn = new double[Cabin.INPUTS];
    final double[] cabin = new double[Cabin.RESULTS];
    final double[] bus = new double[Supply.SIZE];
    double face;
    double fluid;
    double fluidFlow;
    double rateOfAll;
    double mean;
    double sum;
    double coreRate;

    Work(int airColumns, int lanes) {
        air = new double[airColumns];
        rate = new double[lanes];
        lane = new double[lanes];
        part = new double[lanes];
    }
}
