package hotday.study.events;

/**
 * One switching that was worked out.
 *
 * @param run name of the recording
 * @param time s, on the recording's own base
 * @param kind what switched
 * @param value coolant temperature at that moment, K; for the compressor the channel it was seen in on the side it went
 *     to
 * @param unit of the value: {@code K}, {@code 1} (share of full load) or {@code Pa}
 * @param confidence 0..1; how it is made up is in docs/physics/events.md
 * @param evidence in a few words
 */
public record Event(String run, double time, Kind kind, double value, String unit, double confidence, String evidence) {
    public Event {
        if (!(confidence >= 0.0 && confidence <= 1.0)) {
            throw new IllegalArgumentException("confidence is " + confidence + ", must be 0 to 1");
        }
    }
}
