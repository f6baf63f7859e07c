package hotday.signals.obd;

import hotday.signals.isotp.IsoTpMessage;
import hotday.signals.uds.UdsReader;
import java.util.ArrayList;
import java.util.List;

/** Who asked what; finds the question to an answer. Bounded. */
final class Requests {
    private static final int MOST = 256;
    private static final int ALIVE = 0x3E;
    /** In the second byte of services with functions: no answer is wanted. */
    private static final int NO_ANSWER = 0x80;

    private final List<Request> requests = new ArrayList<>();

    void asked(IsoTpMessage message) {
        Request request = find(message.id(), message.extended());
        if (request == null) {
            if (requests.size() == MOST) {
                return;
            }
            request = new Request(message.id(), message.extended());
            requests.add(request);
        }
        request.service = message.at(0);
        request.time = message.time();
        request.identifiers = UdsReader.asked(message);
        request.wanted |= wantsAnswer(message);
    }

    private static boolean wantsAnswer(IsoTpMessage message) {
        // Session, reset, access, communication, routine, fault memory: their second byte may say that none is wanted.
        return switch (message.at(0)) {
            case ALIVE -> false;
            case 0x10, 0x11, 0x27, 0x28, 0x31, 0x85 -> message.length() < 2 || (message.at(1) & NO_ANSWER) == 0;
            default -> true;
        };
    }

    /** The latest question of this service that the sender of an answer can have been asked; null when none was seen. */
    Request answered(IsoTpMessage message, int service) {
        Request own = find(Addresses.request(message.id(), message.extended()), message.extended());
        Request all = find(message.extended() ? Addresses.ALL_EXTENDED : Addresses.ALL, message.extended());
        Request question = latest(own, all, service);
        if (question != null) {
            question.answered = true;
        }
        return question;
    }

    private static Request latest(Request own, Request all, int service) {
        boolean byOwn = own != null && own.service == service;
        boolean byAll = all != null && all.service == service;
        if (byOwn && byAll) {
            return own.time >= all.time ? own : all;
        }
        if (byOwn) {
            return own;
        }
        return byAll ? all : null;
    }

    /** Identifiers under which was asked and nobody ever answered. */
    List<Request> unanswered() {
        return requests.stream()
                .filter(request -> !request.answered && request.wanted)
                .toList();
    }

    private Request find(int id, boolean extended) {
        for (Request request : requests) {
            if (request.is(id, extended)) {
                return request;
            }
        }
        return null;
    }
}
