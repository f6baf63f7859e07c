package hotday.physics.refrigerant;

/**
 * Published coefficients of R-1234yf (2,3,3,3-tetrafluoroprop-1-ene). Equation of state: Lemmon and Akasaka 2022, Int. J.
 * Thermophys. 43:119. Viscosity: Bell and Laesecke 2016, 16th Int. Refrigeration and Air Conditioning Conf. at Purdue (residual-entropy scaling, dilute gas after
 * Chung 1988 and Neufeld 1972). Conductivity: Perkins and Huber 2011, J. Chem. Eng. Data 56:4868-4874. Surface tension:
 * Mulero, Cachadina and Parra 2012, J. Phys. Chem. Ref. Data 41:043105. Reference state IIR (200 kJ/kg, 1 kJ/(kg K) for
 * saturated liquid at 0 degC).
 */
final class R1234yfFacts {
    private R1234yfFacts() {}

    static Facts facts() {
        return new Facts(
                "R-1234yf",
                0.1140416,
                limits(),
                equation(),
                saturation(),
                surfaceTension(),
                conductivity(),
                viscosity());
    }

    private static Facts.Limits limits() {
        return new Facts.Limits(
                121.6, 410.0, 100000000.0, 367.85, 3384400.0, 4180.0, 367.84999999994756, 4179.999999996193);
    }

    private static Facts.Equation equation() {
        return new Facts.Equation(8.314462618, 367.85, 4180.0, ideal(), powers(), bells());
    }

    private static Facts.Ideal ideal() {
        return new Facts.Ideal(
                -12.08152554318905,
                8.52896238365012,
                3.0,
                new double[] {},
                new double[] {},
                new double[] {8.65, 9.75, 2.11},
                new double[] {1.3918716868288703, 4.268044039690091, 12.233247247519369});
    }

    private static Facts.Powers powers() {
        return new Facts.Powers(
                new double[] {
                    0.0340387,
                    1.912859,
                    -2.1984719881617,
                    -0.8147645305033,
                    0.2288282,
                    -1.65436,
                    -1.446628,
                    0.5961722,
                    -0.6148209,
                    -0.0180069
                },
                new int[] {4, 1, 1, 2, 3, 1, 3, 2, 2, 7},
                new double[] {1.0, 0.222, 0.61, 1.122, 0.5, 2.14, 2.284, 1.05, 2.33, 0.778},
                new int[] {0, 0, 0, 0, 0, 2, 2, 1, 2, 1});
    }

    private static Facts.Bells bells() {
        return new Facts.Bells(
                new double[] {0.2845275, -0.3050809, 2.198935, -0.4270329, -0.4015581, 0.1179587, -0.3141002},
                new int[] {1, 1, 1, 1, 1, 1, 1},
                new double[] {1.0, 2.0, 1.236, 1.6, 1.85, 0.7, 1.75},
                new double[] {28.1, 28.0, 1.307, 1.96, 1.25, 1.0, 2.2},
                new double[] {0.96, 0.96, 0.853, 1.15, 1.3, 1.5, 0.762},
                new double[] {1016.0, 1000.0, 1.16, 1.2, 1.26, 1.6, 0.87},
                new double[] {1.061, 1.062, 1.3, 1.04, 1.0, 1.14, 1.1});
    }

    private static Facts.Starts saturation() {
        return new Facts.Starts(
                new Facts.Start(
                        true,
                        true,
                        367.85,
                        3384400.0,
                        new double[] {-7.4507, 2.164, -1.674, -3.318, -1.617},
                        new double[] {1.0, 1.5, 3.0, 4.0, 9.0}),
                new Facts.Start(
                        false, false, 367.85, 4180.0, new double[] {3.392, -4.119, 8.932, -8.525, 3.384}, new double[] {
                            0.4, 0.7, 1.1, 1.5, 2.1
                        }),
                new Facts.Start(
                        true,
                        false,
                        367.85,
                        4180.0,
                        new double[] {-3.616, -74.91, 197.7, -152.76, -61.062, -115.53},
                        new double[] {0.426, 2.0, 2.4, 2.7, 7.5, 15.0}));
    }

    private static Facts.Series surfaceTension() {
        return new Facts.Series(367.85, new double[] {0.06274}, new double[] {1.394});
    }

    private static Facts.Conductivity conductivity() {
        return new Facts.Conductivity(
                new Facts.Series(
                        367.85, new double[] {-0.0102778, 0.0291098, 0.000860643}, new double[] {0.0, 1.0, 2.0}),
                367.85,
                475.55,
                new double[] {
                    -0.0368219,
                    0.0883226,
                    -0.0705909,
                    0.0259026,
                    -0.0032295,
                    0.0397166,
                    -0.077239,
                    0.0664707,
                    -0.0249071,
                    0.00336228
                },
                new int[] {1, 2, 3, 4, 5, 1, 2, 3, 4, 5},
                new double[] {0.0, 0.0, 0.0, 0.0, 0.0, -1.0, -1.0, -1.0, -1.0, -1.0},
                enhancement());
    }

    private static Facts.Enhancement enhancement() {
        return new Facts.Enhancement(
                1.03,
                0.0496,
                1.239,
                0.63,
                1.94e-10,
                1713796058.2,
                1.3806488e-23,
                551.7750000000001,
                367.85,
                3384400.0,
                4180.0);
    }

    private static Viscosity viscosity() {
        return new EntropyViscosity(
                0.5022150937588219,
                292.10672595886604,
                114.0416,
                0.87302,
                new double[] {0.6100913843, 0.4508958312, -0.017063, 0.000564},
                new double[] {0.0, 1.2, -0.308598, 0.035317},
                -54468.47741433059,
                2.0,
                100.0);
    }
}
