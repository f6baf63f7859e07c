package hotday.study.design;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.design.Judge.Demanded;
import hotday.study.design.ScheduleReport.Reason;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.spec.FanSchedule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Why a designed schedule is as it is: every knob is turned a little both ways, and what gets worse is the reason. */
final class Reasons {
    private final Judge judge;
    private final Knobs knobs;
    private final Display display;

    Reasons(Judge judge, Knobs knobs, Display display) {
        this.judge = judge;
        this.knobs = knobs;
        this.display = display;
    }

    List<Reason> of(ScheduleSearch.Found found) {
        List<Passage> before = judge.passages(found.schedule());
        return IntStream.range(0, Knobs.COUNT)
                .parallel()
                .mapToObj(k -> reason(found.at(), k, before))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Reason> reason(int[] at, int knob, List<Passage> before) {
        List<String> why = new ArrayList<>();
        for (int direction = -1; direction <= 1; direction += 2) {
            int[] turned = at.clone();
            turned[knob] = knobs.bounded(knob, at[knob] + direction * knobs.coarse(knob));
            FanSchedule schedule = knobs.schedule(turned);
            if (turned[knob] == at[knob]) {
                why.add(direction < 0 ? "lowest that is tried" : "highest that is tried");
            } else if (!schedule.equals(knobs.schedule(at))) {
                why.add((direction < 0 ? "lower: " : "higher: ") + worse(schedule, before));
            }
        }
        return why.isEmpty() ? Optional.empty() : Optional.of(new Reason(Knobs.title(knob), String.join("; ", why)));
    }

    private String worse(FanSchedule schedule, List<Passage> before) {
        String costly = "";
        double most = 0.0;
        double sum = 0.0;
        for (int i = 0; i < before.size(); i++) {
            Demanded d = judge.parts().get(i);
            Passage now = judge.passage(schedule, d);
            for (Limit limit : d.must()) {
                if (now.headroom().get(limit) < 0.0) {
                    return place(d) + " would not hold (" + limit.title() + ")";
                }
            }
            double more = d.part().share() * judge.cost(now) - d.part().share() * judge.cost(before.get(i));
            sum += more;
            if (more > most) {
                most = more;
                costly = place(d);
            }
        }
        if (sum <= 0.0) {
            return "makes no difference";
        }
        return costly.isEmpty() ? "costs more" : "costs more, most in " + costly;
    }

    private String place(Demanded d) {
        return d.part().kase().title() + " at "
                + display.format(Quantity.TEMPERATURE, d.part().ambient());
    }
}
