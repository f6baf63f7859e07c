package hotday.signals.obd;

import hotday.core.finding.Finding;
import hotday.signals.frame.Frame;
import hotday.signals.frame.FrameDecoder;
import hotday.signals.frame.SampleSink;
import hotday.signals.isotp.Addressing;
import hotday.signals.isotp.IsoTpEvent;
import hotday.signals.isotp.IsoTpListener;
import hotday.signals.isotp.IsoTpMessage;
import hotday.signals.isotp.IsoTpSink;
import hotday.signals.uds.UdsAnswer;
import hotday.signals.uds.UdsReader;
import java.util.ArrayList;
import java.util.List;

/**
 * Values and texts from the diagnostic connector. It listens to the identifiers of diagnosis (700 to 7FF, 29 bits
 * 18DAxxxx and 18DBxxxx), puts longer messages together and takes the answers apart:
 *
 * <ul>
 *   <li>service 01, of the units that the law wants to answer (7E8 to 7EF, 18DAF1xx): {@code OBD.EngineSpeed@7E8};
 *   <li>service 09: {@code OBD.VehicleIdentification@7E8} and others, as texts;
 *   <li>data by identifier (22) and control of inputs and outputs (2F): {@code UDS.F190@7E8}, their bytes as a text.
 * </ul>
 *
 * <p>Everything else is followed for whether it was answered and told as findings. A value of service 01 of a unit met
 * before allocates nothing. For one network, one thread and one sink.
 */
public final class ObdDecoder implements FrameDecoder {
    private static final int VALUES = 0x41;
    private static final int TEXTS = 0x49;
    /** Units that are told apart; more do not exist on real networks. */
    private static final int UNITS = 256;

    private final Pid[] pids = new Pid[256];
    private final IsoTpListener listener = new IsoTpListener(Addressing.NORMAL, new Messages());
    private final Requests requests = new Requests();
    private final Refused refused = new Refused();
    private final List<Responder> responders = new ArrayList<>();
    private SampleSink current;
    private long notUnderstood;

    public ObdDecoder() {
        PidTable.shipped().forEach(pid -> pids[pid.number()] = pid);
    }

    /** What became of the messages. */
    public IsoTpListener transport() {
        return listener;
    }

    @Override
    public boolean decode(Frame frame, SampleSink samples) {
        if (!Addresses.isDiagnosis(frame.id(), frame.extended())) {
            return false;
        }
        current = samples;
        long odd = odd();
        listener.take(frame);
        return odd() == odd;
    }

    @Override
    public String name(Frame frame) {
        return Addresses.isDiagnosis(frame.id(), frame.extended()) ? "diagnosis" : "";
    }

    private long odd() {
        return listener.count(IsoTpEvent.MALFORMED) + listener.count(IsoTpEvent.STRAY);
    }

    private final class Messages implements IsoTpSink {
        @Override
        public void message(IsoTpMessage message) {
            if (UdsReader.isRequest(message)) {
                requests.asked(message);
            } else {
                answer(message);
            }
        }
    }

    private void answer(IsoTpMessage message) {
        int first = message.at(0);
        if (first == UdsReader.REFUSED) {
            notDone(message);
            return;
        }
        Request question = requests.answered(message, first - UdsReader.ANSWERED);
        refused.done(message, first - UdsReader.ANSWERED);
        boolean lawful = Addresses.isLawful(message.id(), message.extended());
        switch (first) {
            case VALUES -> {
                if (lawful) {
                    values(message);
                }
            }
            case TEXTS -> {
                if (lawful) {
                    texts(message);
                }
            }
            case UdsReader.READ + UdsReader.ANSWERED, UdsReader.CONTROL + UdsReader.ANSWERED ->
                bytes(message, question == null ? List.of() : question.identifiers);
            default -> {}
        }
    }

    private void notDone(IsoTpMessage message) {
        if (message.length() < 3) {
            notUnderstood++;
            return;
        }
        requests.answered(message, message.at(1));
        refused.take(message);
    }

    private void values(IsoTpMessage message) {
        Responder responder = responder(message);
        if (responder == null || !responder.values(message, current)) {
            notUnderstood++;
        }
    }

    private Responder responder(IsoTpMessage message) {
        for (Responder responder : responders) {
            if (responder.is(message.id(), message.extended())) {
                return responder;
            }
        }
        if (responders.size() == UNITS) {
            return null;
        }
        Responder met = new Responder(message.id(), message.extended(), pids);
        responders.add(met);
        return met;
    }

    private void texts(IsoTpMessage message) {
        String name = message.length() < 2 ? "" : VehicleTexts.name(message.at(1));
        String text = name.isEmpty() ? "" : VehicleTexts.of(message);
        if (!text.isEmpty()) {
            tell(message, "OBD." + name, text);
        }
    }

    private void bytes(IsoTpMessage message, List<Integer> asked) {
        List<UdsAnswer> answers = UdsReader.answers(message, asked);
        notUnderstood += answers.isEmpty() ? 1 : 0;
        for (UdsAnswer answer : answers) {
            if (answer instanceof UdsAnswer.Data data) {
                tell(message, String.format("UDS.%04X", data.identifier()), data.bytes());
            } else if (answer instanceof UdsAnswer.Several several) {
                tell(message, "UDS.several", several.bytes());
            } else if (answer instanceof UdsAnswer.Control control) {
                tell(
                        message,
                        String.format("UDS.%04X.control", control.identifier()),
                        (control.words() + " " + control.bytes()).strip());
            }
        }
    }

    private void tell(IsoTpMessage message, String name, String text) {
        int number = current.signal(name + "@" + Addresses.name(message.id()), "");
        current.text(message.time(), number, text);
    }

    @Override
    public List<Finding> findings() {
        return new ObdFindings(listener, responders, requests, refused, notUnderstood, pids).all();
    }
}
