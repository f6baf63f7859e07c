package hotday.physics.refrigerant;

/**
 * Published coefficients of R-134a (1,1,1,2-tetrafluoroethane). Equation of state: Tillner-Roth and Baehr 1994, J. Phys. Chem. Ref.
 * Data 23:657-729. Viscosity: Huber, Laesecke and Perkins 2003, Ind. Eng. Chem. Res. 42:3163-3178. Conductivity:
 * McLinden, Klein and Perkins 2000, Int. J. Refrig. 23:43-63. Surface tension: Mulero, Cachadina and Parra 2012, J. Phys.
 * Chem. Ref. Data 41:043105. The two constants of the ideal part are shifted by some 1e-8 so that the IIR reference state (200 kJ/kg, 1
 * kJ/(kg K) for saturated liquid at 0 degC) is hit to rounding.
 */
final class R134aFacts {
    private R134aFacts() {}

    static Facts facts() {
        return new Facts(
                "R-134a", 0.102032, limits(), equation(), saturation(), surfaceTension(), conductivity(), viscosity());
    }

    private static Facts.Limits limits() {
        return new Facts.Limits(
                169.85, 455.0, 70000000.0, 374.21, 4059280.0, 5017.053, 374.2119665849513, 5017.495621783674);
    }

    private static Facts.Equation equation() {
        return new Facts.Equation(8.314471, 374.18, 4978.830171000001, ideal(), powers(), bells());
    }

    private static Facts.Ideal ideal() {
        return new Facts.Ideal(
                -1.019534546500667,
                9.04713537629684,
                -1.629789,
                new double[] {-9.723916, -3.92717},
                new double[] {-0.5, -0.75},
                new double[] {},
                new double[] {});
    }

    private static Facts.Powers powers() {
        return new Facts.Powers(
                new double[] {
                    0.05586817,
                    0.498223,
                    0.02458698,
                    0.0008570145,
                    0.0004788584,
                    -1.800808,
                    0.2671641,
                    -0.04781652,
                    0.01423987,
                    0.3324062,
                    -0.007485907,
                    0.0001017263,
                    -0.5184567,
                    -0.08692288,
                    0.2057144,
                    -0.005000457,
                    0.0004603262,
                    -0.003497836,
                    0.006995038,
                    -0.01452184,
                    -0.0001285458
                },
                new int[] {2, 1, 3, 6, 6, 1, 1, 2, 5, 2, 2, 4, 1, 4, 1, 2, 4, 1, 5, 3, 10},
                new double[] {
                    -0.5, 0.0, 0.0, 0.0, 1.5, 1.5, 2.0, 2.0, 1.0, 3.0, 5.0, 1.0, 5.0, 5.0, 6.0, 10.0, 10.0, 10.0, 18.0,
                    22.0, 50.0
                },
                new int[] {0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 2, 2, 2, 2, 2, 2, 3, 3, 3, 4});
    }

    private static Facts.Bells bells() {
        return new Facts.Bells(
                new double[] {},
                new int[] {},
                new double[] {},
                new double[] {},
                new double[] {},
                new double[] {},
                new double[] {});
    }

    private static Facts.Starts saturation() {
        return new Facts.Starts(
                new Facts.Start(
                        true,
                        true,
                        374.21,
                        4059280.0,
                        new double[] {
                            0.4331478287291047,
                            -9.090302559074352,
                            2.1476074125217703,
                            -1.557687007603464,
                            -3.5020328972698604,
                            14.958442337201044
                        },
                        new double[] {0.845, 0.99, 1.14, 2.651, 4.507, 17.235}),
                new Facts.Start(
                        false,
                        false,
                        374.21,
                        5017.053,
                        new double[] {
                            18.772731940930015,
                            -51.49939472178225,
                            40.793536440596085,
                            -1481.6500471538966,
                            1600.534434298925,
                            -67338.52423732559
                        },
                        new double[] {0.673, 0.994, 1.257, 5.783, 5.943, 19.94}),
                new Facts.Start(
                        true,
                        true,
                        374.21,
                        5017.053,
                        new double[] {
                            -5.147386240766544,
                            5.34618043286371,
                            -7.611015272838434,
                            -28.85436432788653,
                            -9.079306067130748,
                            64.0
                        },
                        new double[] {0.476, 0.966, 1.321, 8.491, 13.463, 13.463}));
    }

    private static Facts.Series surfaceTension() {
        return new Facts.Series(374.21, new double[] {0.05801}, new double[] {1.241});
    }

    private static Facts.Conductivity conductivity() {
        return new Facts.Conductivity(
                new Facts.Series(1.0, new double[] {-0.0105248, 8.00982e-05}, new double[] {0.0, 1.0}),
                1.0,
                515.249968352,
                new double[] {0.0037740609300000003, 0.010534223865, -0.002952794565, 0.00128672592},
                new int[] {1, 2, 3, 4},
                new double[] {0.0, 0.0, 0.0, 0.0},
                enhancement());
    }

    private static Facts.Enhancement enhancement() {
        return new Facts.Enhancement(
                1.03,
                0.0496,
                1.239,
                0.63,
                1.94e-10,
                1892020000.0,
                1.3806488e-23,
                561.27,
                374.18,
                4059280.0,
                4978.830171000001);
    }

    private static Viscosity viscosity() {
        return new DensityViscosity(
                0.46893199999999996,
                299.363,
                2.1357e-08,
                102.03099999999999,
                new double[] {0.355404, -0.464337, 0.0257353},
                6.02214129e+23,
                new double[] {
                    -19.572881,
                    219.73999,
                    -1015.3226,
                    2471.01251,
                    -3375.1717,
                    2491.6597,
                    -787.26086,
                    14.085455,
                    -0.34664158
                },
                new double[] {0.0, -0.25, -0.5, -0.75, -1.0, -1.25, -1.5, -2.5, -5.5},
                374.21,
                5017.053,
                new double[] {
                    -2.06900719e-05, 3.56029549e-07, 2.11101816e-06, 1.39601415e-05, -4.5643502e-06, -3.51593275e-06
                },
                new int[] {1, 2, 2, 2, 2, 3},
                new double[] {0.0, 6.0, 2.0, 0.5, -2.0, 0.0},
                0.00021476332,
                3.163695636,
                new double[] {1.0, -0.0890173375, 0.100035295},
                new double[] {0.0, -1.0, -2.0});
    }
}
