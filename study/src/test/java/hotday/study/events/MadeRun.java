package hotday.study.events;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** A made-up run with known switchings, then noise and the steps of the gauges. Numbers are drawn from the seed. */
final class MadeRun {
    static final double KELVIN = 273.15;

    final List<Double> fanOn = new ArrayList<>();
    final List<Double> fanOff = new ArrayList<>();
    final List<Double> compressorOn = new ArrayList<>();
    final List<Double> compressorOff = new ArrayList<>();
    double compressorSeconds;

    final Random random;
    final double hertz;
    final double[] time;
    final double[] coolant; // degC
    final double[] speed;
    final double[] engineSpeed;
    final double[] load;
    final double[] voltage;

    MadeRun(long seed, double hertz, double length) {
        this.random = new Random(seed);
        this.hertz = hertz;
        int n = (int) (length * hertz);
        time = new double[n];
        coolant = new double[n];
        speed = new double[n];
        engineSpeed = new double[n];
        load = new double[n];
        voltage = new double[n];
        for (int i = 0; i < n; i++) {
            time[i] = i / hertz;
        }
        Arrays.fill(engineSpeed, 70.0);
        Arrays.fill(load, 0.25);
        Arrays.fill(voltage, 13.8);
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** Warm idle between two thresholds of the gauge, which follows the coolant with a lag; the fan draws current. */
    MadeRun fan(double on, double off, double draw) {
        double rise = between(0.04, 0.09);
        double fall = between(0.3, 0.6);
        double t = off + 1.0;
        double gauge = t;
        boolean runs = false;
        for (int i = 0; i < time.length; i++) {
            t += (runs ? -fall : rise) / hertz;
            gauge += (t - gauge) / (3.0 * hertz);
            if (!runs && gauge >= on) {
                runs = true;
                fanOn.add(time[i]);
            } else if (runs && gauge <= off) {
                runs = false;
                fanOff.add(time[i]);
            }
            coolant[i] = gauge;
            load[i] *= runs ? 1.0 + draw : 1.0;
            voltage[i] -= runs ? 0.8 * draw : 0.0;
        }
        return this;
    }

    /** Compressor cycling over warm idle; load creeps down by a fifth over the run. */
    MadeRun compressor(double from) {
        double on = between(12.0, 25.0);
        double off = between(9.0, 14.0);
        boolean runs = false;
        double next = from;
        for (int i = 0; i < time.length; i++) {
            if (time[i] >= next) {
                runs = !runs;
                (runs ? compressorOn : compressorOff).add(time[i]);
                next = time[i] + (runs ? on : off) * between(0.85, 1.15);
            }
            load[i] *= (runs ? 1.42 : 1.0) * (1.0 - 0.2 * i / time.length);
            engineSpeed[i] *= runs ? 1.25 : 1.0;
            voltage[i] -= runs ? 0.1 : 0.0;
            compressorSeconds += runs ? 1.0 / hertz : 0.0;
        }
        return this;
    }

    /** Coolant held by the thermostat with its slow play, at standstill. */
    MadeRun held(double at) {
        double play = between(0.2, 1.4);
        double period = between(25.0, 120.0);
        for (int i = 0; i < time.length; i++) {
            coolant[i] = at + play * Math.sin(2.0 * Math.PI * time[i] / period);
        }
        return this;
    }

    /**
     * Town and country: stops and drives of random length, coolant up to 6 K over the thermostat's at stops and down when
     * driving off, faster at speed.
     */
    MadeRun drive(double at) {
        double t = at;
        double v = 0.0;
        double goal = 0.0;
        double next = 30.0;
        for (int i = 0; i < time.length; i++) {
            if (time[i] >= next) {
                goal = goal > 0.0 && random.nextDouble() < 0.5 ? 0.0 : between(9.0, 30.0);
                next = time[i] + between(20.0, 120.0);
            }
            v += Math.max(-2.0, Math.min(1.5, goal - v)) / hertz;
            speed[i] = v;
            boolean drives = v > 1.0;
            engineSpeed[i] = drives ? 110.0 + 5.0 * v : 70.0;
            load[i] = goal > v + 0.5 ? 0.7 : drives ? (goal < v - 0.5 ? 0.15 : 0.35) : 0.25;
            t += (drives ? 0.012 * v * (at - t) : t < at + 6.0 ? 0.04 : 0.0) / hertz;
            coolant[i] = t;
        }
        return this;
    }

    /** From cold: up to where the thermostat opens, a drop of the cold slug, then held. */
    double warmUp(double start, double opening, double drop) {
        double pace = between(0.06, 0.14);
        double opened = -1.0;
        double t = start;
        for (int i = 0; i < time.length; i++) {
            if (opened < 0.0) {
                t += pace / hertz;
                opened = t >= opening ? time[i] : opened;
            } else {
                t += (opening - drop - t) / (15.0 * hertz);
            }
            coolant[i] = t;
            double cold = Math.max(0.0, Math.min(1.0, (65.0 - t) / 45.0));
            engineSpeed[i] *= 1.0 + 0.6 * cold;
        }
        return opened;
    }

    /** With noise and in the steps of the gauges. */
    Trace trace() {
        return new Trace(
                "made",
                time,
                shown(coolant, 0.05, 1.0, KELVIN),
                shown(engineSpeed, 0.6, 0.026, 0.0),
                shown(speed, 0.0, 1.0 / 3.6, 0.0),
                shown(load, 0.004, 1.0 / 255.0, 0.0),
                none(),
                shown(voltage, 0.02, 0.02, 0.0),
                1.0);
    }

    Trace coolantAndSpeedOnly() {
        Trace all = trace();
        return new Trace("made", time, all.coolant(), none(), all.speed(), none(), none(), none(), 1.0);
    }

    Trace withoutSpeed() {
        Trace all = trace();
        return new Trace(
                "made", time, all.coolant(), all.engineSpeed(), none(), all.load(), none(), all.voltage(), 1.0);
    }

    private double[] none() {
        double[] none = new double[time.length];
        Arrays.fill(none, Double.NaN);
        return none;
    }

    private double[] shown(double[] values, double noise, double step, double plus) {
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = step * Math.rint((values[i] + noise * random.nextGaussian()) / step) + plus;
        }
        return out;
    }
}
