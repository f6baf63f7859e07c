package hotday.study.wiring;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import hotday.vehicle.cases.Case;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.Wiring;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The wiring of a build against the rules of the trade.
 *
 * @param idle currents at hot idle on the design day, fan by its schedule; empty where nothing settles
 * @param fullFan the same with the fan at full speed
 * @param afterRun the longest one
 */
public record WiringCheck(
        BuildSheet sheet,
        Wiring wiring,
        FanLoop loop,
        Optional<IdleBalance> idle,
        Optional<IdleBalance> fullFan,
        AfterRun afterRun,
        List<Rule> rules,
        List<Finding> findings) {
    public WiringCheck {
        rules = List.copyOf(rules);
        findings = List.copyOf(findings);
    }

    /** Whether nothing is at fault; warnings do not count. */
    public boolean holds() {
        return findings.stream().noneMatch(f -> f.severity() == Severity.FAULT);
    }

    /**
     * Checks a sheet that has a wiring block; refuses one without.
     *
     * @param cases among them {@code hot-idle}
     */
    public static WiringCheck of(Path file, BuildSheet sheet, List<Case> cases) {
        Wiring wiring = sheet.wiring()
                .orElseThrow(
                        () -> InputException.at(
                                Place.of(file.toString()),
                                "wiring-missing",
                                "has no 'wiring' block: type at least 'wiring: {fuse: {rating: 60 A}, drive: {kind: driver, rating: 80 A}}' with your own values; docs/build-sheet.md lists the rest"));
        FanLoop loop = FanLoop.of(sheet.vehicle(), wiring);
        HotIdle idle = HotIdle.of(sheet.vehicle(), cases);
        AfterRun after = AfterRun.of(sheet.vehicle(), loop);
        SupplyRules supply = new SupplyRules(sheet, wiring, loop);
        List<Rule> rules = new ArrayList<>(new CableRules(sheet, wiring, loop).all());
        rules.addAll(supply.all(idle, after));
        List<Finding> findings = new ArrayList<>();
        rules.forEach(r -> r.finding().ifPresent(findings::add));
        supply.notSettled(idle).ifPresent(why -> findings.add(Finding.warning("wiring-idle-unsettled", why)));
        return new WiringCheck(sheet, wiring, loop, idle.bySchedule(), idle.fullFan(), after, rules, findings);
    }
}
