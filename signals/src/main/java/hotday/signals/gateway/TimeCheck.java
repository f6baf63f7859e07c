package hotday.signals.gateway;

import hotday.core.finding.Finding;
import hotday.signals.bus.Schedule;
import java.util.OptionalLong;

/** How old values get, and what is sent when the source falls silent. */
final class TimeCheck {
    private final TranslationSheet.Gateway gateway;
    private final Findings out;

    TimeCheck(TranslationSheet.Gateway gateway, Findings out) {
        this.gateway = gateway;
        this.out = out;
    }

    /** Age of the oldest value that is sent, ns; empty for a fixed value and where something is not said. */
    OptionalLong check(Line line) {
        values(line);
        if (line.from().isEmpty()) {
            return OptionalLong.empty();
        }
        rates(line, line.from().get());
        return silence(line, line.from().get());
    }

    /** The safe value, and the fixed one. */
    private void values(Line line) {
        Translation t = line.typed();
        t.fixed().ifPresent(text -> value(line, text, "fixed"));
        t.safe().ifPresent(text -> value(line, text, "safe"));
        if (line.from().isPresent() && t.safe().isEmpty()) {
            out.fault(
                    "safe-value-missing",
                    t.places().block(),
                    "nothing says what " + line.to().name() + " shows when its source is missing; type 'safe'");
        }
    }

    private void value(Line line, String text, String key) {
        Translation t = line.typed();
        TypedValue.Answer answer = TypedValue.physical(line.to().signal(), line.toUnit(), t.measures(), text);
        if (answer.raw().isEmpty()) {
            out.fault(answer.key(), t.places().at(key), "'" + key + "': " + answer.message());
        }
    }

    private void rates(Line line, Line.End from) {
        OptionalLong comes = from.message().shortest();
        OptionalLong goes = line.to().message().shortest();
        if (comes.isPresent() && goes.isPresent() && comes.getAsLong() > goes.getAsLong()) {
            long times = Math.round((double) comes.getAsLong() / goes.getAsLong());
            out.note(
                    "rate-repeats",
                    line.typed().places().at("to"),
                    line.to().name() + " is sent every " + Shown.ms(goes.getAsLong()) + ", its source comes every "
                            + Shown.ms(comes.getAsLong()) + ": the same value about " + times + " times");
        }
    }

    private OptionalLong silence(Line line, Line.End from) {
        Translation t = line.typed();
        if (t.timeOut().isEmpty()) {
            out.fault(
                    "time-out-missing",
                    t.places().block(),
                    "nothing says from when on " + from.name() + " counts as missing; type 'time_out'");
            return OptionalLong.empty();
        }
        if (from.message().every().isEmpty() || line.to().message().every().isEmpty()) {
            return OptionalLong.empty();
        }
        long every = from.message().every().getAsLong();
        long oldest =
                t.timeOut().getAsLong() + t.hold() * line.to().message().every().getAsLong();
        tooLong(t, every, oldest);
        tooShort(t, from, every);
        return OptionalLong.of(oldest);
    }

    private void tooLong(Translation t, long every, long oldest) {
        double allowed = gateway.stale() * every;
        if (oldest > allowed) {
            out.add(Finding.fault(
                            "time-out-too-long",
                            t.places().at("time_out"),
                            "values up to " + Shown.ms(oldest) + " old are sent ('time_out'"
                                    + (t.hold() > 0 ? " and " + t.hold() + " times held" : "") + "); allowed are "
                                    + Shown.number(gateway.stale()) + " periods of the source, "
                                    + Shown.ms((long) allowed))
                    .with("oldest_ms", oldest / 1e6)
                    .with("limit_ms", allowed / 1e6));
        }
    }

    /** Two frames may come as far apart as a period, all that one of them can wait, and a look of the gateway. */
    private void tooShort(Translation t, Line.End from, long every) {
        long response = from.bus().response(from.message());
        if (response == Schedule.UNBOUNDED) {
            return;
        }
        long apart = every + response + gateway.poll();
        if (t.timeOut().getAsLong() < apart) {
            out.add(Finding.fault(
                            "time-out-too-short",
                            t.places().at("time_out"),
                            "frames of '" + from.message().message().name() + "' may come " + Shown.ms(apart)
                                    + " apart with nothing wrong (period " + Shown.ms(every) + ", response "
                                    + Shown.ms(response) + ", a look of the gateway " + Shown.ms(gateway.poll())
                                    + ")")
                    .with("apart_ms", apart / 1e6));
        }
    }
}
