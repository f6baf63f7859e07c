package hotday.signals.obd;

import hotday.core.finding.Finding;
import hotday.signals.isotp.IsoTpEvent;
import hotday.signals.isotp.IsoTpListener;
import hotday.signals.uds.Refusals;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a person should know once a recording with diagnosis is over. */
final class ObdFindings {
    /** Of refusals by unit, service and reason so many are told. */
    private static final int TOLD = 20;

    private final IsoTpListener listener;
    private final List<Responder> responders;
    private final Requests requests;
    private final Refused refused;
    private final long notUnderstood;
    private final Pid[] pids;
    private final List<Finding> findings = new ArrayList<>();

    ObdFindings(
            IsoTpListener listener,
            List<Responder> responders,
            Requests requests,
            Refused refused,
            long notUnderstood,
            Pid[] pids) {
        this.listener = listener;
        this.responders = responders;
        this.requests = requests;
        this.refused = refused;
        this.notUnderstood = notUnderstood;
        this.pids = pids;
    }

    List<Finding> all() {
        broken();
        if (notUnderstood > 0) {
            findings.add(Finding.warning(
                            "obd-answer-not-understood",
                            notUnderstood
                                    + " answers of services 01, 22 or 2F were cut short or hold what the table does not know")
                    .with("count", notUnderstood));
        }
        responders.forEach(this::denied);
        refusals();
        promises();
        silence();
        remembered();
        return List.copyOf(findings);
    }

    private void broken() {
        for (IsoTpEvent event : IsoTpEvent.values()) {
            long count = listener.count(event);
            if (event != IsoTpEvent.COMPLETE && count > 0) {
                findings.add(Finding.warning(
                                "diagnosis-message-broken",
                                "diagnostic messages, " + count + " times: " + event.words())
                        .with("event", event.name())
                        .with("count", count));
            }
        }
    }

    private void denied(Responder responder) {
        if (!responder.denied().isEmpty()) {
            String list = hex(responder.denied());
            findings.add(Finding.warning(
                            "obd-value-denied",
                            "unit " + responder.name()
                                    + " sends values of service 01 that it says it does not support: " + list
                                    + "; do not lean on them")
                    .with("unit", responder.name())
                    .with("pids", list));
        }
    }

    private static String hex(BitSet pids) {
        return pids.stream().mapToObj(pid -> String.format("%02X", pid)).collect(Collectors.joining(" "));
    }

    private void refusals() {
        int told = 0;
        for (Map.Entry<Refused.Refusal, Long> entry : refused.counts().entrySet()) {
            if (told++ == TOLD) {
                int more = refused.counts().size() - TOLD;
                findings.add(Finding.note(
                                "diagnosis-refused-more",
                                "and " + more + " further refusals by unit, service and reason")
                        .with("more", more));
                return;
            }
            Refused.Refusal refusal = entry.getKey();
            findings.add(Finding.note(
                            "diagnosis-refused",
                            String.format(
                                    "unit %s refused service %02X %d times: %s",
                                    refusal.unit(),
                                    refusal.service(),
                                    entry.getValue(),
                                    Refusals.words(refusal.code())))
                    .with("unit", refusal.unit())
                    .with("service", refusal.service())
                    .with("code", refusal.code())
                    .with("count", entry.getValue()));
        }
    }

    private void promises() {
        for (Refused.Refusal promise : refused.promised()) {
            findings.add(Finding.warning(
                            "diagnosis-still-pending",
                            String.format(
                                    "unit %s promised an answer to service %02X that never came",
                                    promise.unit(), promise.service()))
                    .with("unit", promise.unit())
                    .with("service", promise.service()));
        }
    }

    private void silence() {
        List<String> silent = requests.unanswered().stream()
                .map(request -> Addresses.name(request.id))
                .sorted()
                .toList();
        if (!silent.isEmpty()) {
            findings.add(Finding.note(
                            "diagnosis-no-answer",
                            "nobody answered requests to " + silent.size() + " addresses: " + String.join(" ", silent))
                    .with("addresses", silent));
        }
    }

    /** Which of the values read nobody has looked up. */
    private void remembered() {
        BitSet met = new BitSet();
        responders.forEach(responder -> met.or(responder.met()));
        List<String> names = met.stream()
                .mapToObj(pid -> pids[pid])
                .filter(pid -> pid.isNumber() && pid.fromMemory())
                .map(Pid::name)
                .toList();
        if (!names.isEmpty()) {
            findings.add(Finding.note(
                            "obd-from-memory",
                            "how these values of service 01 are scaled is remembered, not read in the standard: "
                                    + String.join(", ", names))
                    .with("signals", names));
        }
    }
}
