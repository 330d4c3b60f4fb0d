package kerbfolio.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * A scale along one side of a chart, straight or logarithmic.
 *
 * @param from value at its beginning
 * @param to value at its end; more than the former
 * @param isLog whether equal steps are equal ratios
 * @param begin where it begins on the figure [pt]
 * @param end where it ends; may lie before the beginning, as values grow upward
 */
record Axis(double from, double to, boolean isLog, double begin, double end) {
    private static final double[] STEPS = {1, 2, 5};
    private static final int FEW = 3;
    private static final int MANY = 6;
    private static final double DUST = 1e-9;

    /** Whole decades around some values. */
    static Axis decades(double least, double most, double begin, double end) {
        double low = Math.floor(Math.log10(least) + DUST);
        double high = Math.max(low + 1, Math.ceil(Math.log10(most) - DUST));
        return new Axis(Math.pow(10, low), Math.pow(10, high), true, begin, end);
    }

    /** From nothing to a round value. */
    static Axis upTo(double most, double begin, double end) {
        double step = step(most);
        return new Axis(0, step * Math.ceil(most / step - DUST), false, begin, end);
    }

    private static double step(double most) {
        double decade = Math.pow(10, Math.floor(Math.log10(most)) - 1);
        for (double size = decade; ; size *= 10) {
            for (double each : STEPS) {
                if (most / (each * size) <= MANY) {
                    return each * size;
                }
            }
        }
    }

    /** Where a value lies; one outside lies at the end it is nearer to. */
    double at(double value) {
        double share =
                isLog ? Math.log(Math.max(value, from) / from) / Math.log(to / from) : (value - from) / (to - from);
        return begin + Math.max(0, Math.min(1, share)) * (end - begin);
    }

    boolean has(double value) {
        return value >= from * (1 - DUST) && value <= to * (1 + DUST);
    }

    /** A value that lies somewhere on it. */
    double value(double share) {
        return isLog ? from * Math.pow(to / from, share) : from + share * (to - from);
    }

    /** Values with a line and a figure. */
    List<Double> ticks() {
        var ticks = new ArrayList<Double>();
        if (isLog) {
            boolean isShort = Math.log10(to / from) <= FEW;
            for (double decade = from; decade <= to * (1 + DUST); decade *= 10) {
                for (double step : STEPS) {
                    if ((step == 1 || isShort) && has(step * decade)) {
                        ticks.add(step * decade);
                    }
                }
            }
        } else {
            double step = step(to);
            for (int i = 0; from + i * step <= to * (1 + DUST); i++) {
                ticks.add(from + i * step);
            }
        }
        return ticks;
    }
}
