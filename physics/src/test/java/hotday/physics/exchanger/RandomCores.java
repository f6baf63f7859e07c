package hotday.physics.exchanger;

import java.util.SplittableRandom;

/** Faces, flow orders and air of seeded random shape: tiles blow backward, others stand still. */
final class RandomCores {
    private RandomCores() {}

    static FaceGrid face(SplittableRandom random) {
        double[] heights = new double[random.nextInt(1, 9)];
        double[] widths = new double[random.nextInt(1, 13)];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = random.nextDouble(0.01, 0.1);
        }
        for (int i = 0; i < widths.length; i++) {
            widths[i] = random.nextDouble(0.01, 0.1);
        }
        return new FaceGrid(heights, widths);
    }

    static Passes passes(SplittableRandom random, FaceGrid face) {
        int top = random.nextInt(face.rows());
        int left = random.nextInt(face.columns());
        Footprint f =
                new Footprint(face, top, random.nextInt(top, face.rows()), left, random.nextInt(left, face.columns()));
        Passes.Side side = random.nextBoolean() ? Passes.Side.LEFT : Passes.Side.RIGHT;
        return switch (random.nextInt(4)) {
            case 0 -> Passes.crossFlow(f, side);
            case 1 -> Passes.downFlow(f);
            case 2 -> Passes.serpentine(f, side);
            default -> f.rows() < 2 ? Passes.crossFlow(f, side) : Passes.multiPass(f, side, 0.6, 0.4);
        };
    }

    /** W/K per tile. */
    static double[] rates(SplittableRandom random, FaceGrid face) {
        double[] rates = new double[face.tiles()];
        for (int t = 0; t < rates.length; t++) {
            rates[t] = random.nextInt(10) == 0 ? 0.0 : random.nextDouble(random.nextBoolean() ? 0 : -15, 30);
        }
        return rates;
    }

    /** Near R-134a at 13 bar; hot gas, mixture or liquid enters, or nothing. */
    static RefrigerantStream stream(SplittableRandom random) {
        RefrigerantStream s = new RefrigerantStream(11);
        s.massFlow = random.nextInt(9) == 0 ? 0.0 : random.nextDouble(0.001, 0.08);
        s.enthalpy = random.nextDouble(200e3, 480e3);
        s.saturationTemperature = random.nextDouble(270, 345);
        s.liquidEnthalpy = 270e3;
        s.vapourEnthalpy = 420e3;
        s.liquidHeat = 1500;
        s.vapourHeat = 1100;
        s.liquidConductance = random.nextDouble(500, 3000);
        s.vapourConductance = random.nextDouble(300, 2000);
        for (int i = 0; i < s.twoPhaseConductance.length; i++) {
            s.twoPhaseConductance[i] = random.nextDouble(1500, 9000);
        }
        return s;
    }
}
