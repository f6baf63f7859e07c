package hotday.study.picture;

import java.util.List;

/**
 * What switched, as a thin lane under a chart.
 *
 * @param name of what switched
 * @param spans from and to while it was on, s
 * @param marks single moments, s
 */
public record Lane(String name, List<Span> spans, List<Double> marks) {
    /** @param from, to s */
    public record Span(double from, double to) {}
}
