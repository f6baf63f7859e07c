package hotday.signals.gateway;

import hotday.core.finding.Place;
import hotday.signals.bus.FrameLength;
import hotday.signals.bus.Schedule;
import hotday.signals.bus.Traffic;
import hotday.signals.dbc.DbcFile;
import hotday.signals.dbc.Message;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/** A network with everything that is sent on it: description and sheet laid over each other. */
final class Bus {
    /** Name that DBC files usually give to the period of a message, ms. */
    private static final String PERIOD_ATTRIBUTE = "GenMsgCycleTime";

    private static final long MILLI = 1_000_000;

    private final NetworkPlan plan;
    private final Map<String, OnBus> byName = new LinkedHashMap<>();
    private final Map<String, Long> responses = new HashMap<>();
    private double load;
    private double bareLoad;

    private Bus(NetworkPlan plan) {
        this.plan = plan;
    }

    static Bus of(NetworkPlan plan) {
        Bus bus = new Bus(plan);
        Set<String> nodes = new HashSet<>(plan.dbc().nodes());
        for (Message message : plan.dbc().messages()) {
            if (!plan.silent().contains(message.name())) {
                bus.byName.putIfAbsent(message.name(), bus.onBus(message, nodes));
            }
        }
        bus.respond();
        return bus;
    }

    private OnBus onBus(Message message, Set<String> nodes) {
        Optional<MessagePlan> typed = Optional.ofNullable(plan.messages().get(message.name()));
        List<String> senders = typed.flatMap(MessagePlan::from).map(List::of).orElseGet(() -> senders(message, nodes));
        OptionalLong every =
                typed.map(MessagePlan::every).filter(OptionalLong::isPresent).orElseGet(() -> period(message));
        OptionalLong onChange = typed.map(MessagePlan::onChange).orElse(OptionalLong.empty());
        OptionalLong jitter =
                typed.map(MessagePlan::jitter).filter(OptionalLong::isPresent).orElse(plan.jitter());
        return new OnBus(
                message,
                senders,
                senders.contains(plan.gateway()),
                every,
                onChange.isPresent() ? onChange : every,
                jitter.orElse(0),
                typed.map(MessagePlan::deadline).orElse(OptionalLong.empty()),
                typed,
                typed.map(MessagePlan::place).orElse(message.place()));
    }

    /** Those that are nodes of the network: files name a stand-in where nobody sends. */
    private static List<String> senders(Message message, Set<String> nodes) {
        Set<String> senders = new LinkedHashSet<>();
        senders.add(message.sender());
        senders.addAll(message.moreSenders());
        senders.removeIf(s -> s.isBlank() || !nodes.isEmpty() && !nodes.contains(s));
        return List.copyOf(senders);
    }

    /** As the file says it; 0 there means that there is none. */
    OptionalLong period(Message message) {
        Optional<String> typed = plan.dbc().attribute(message, PERIOD_ATTRIBUTE);
        try {
            double ms = Double.parseDouble(typed.orElse("0"));
            return ms >= 0.1 && ms * MILLI <= Traffic.LONGEST
                    ? OptionalLong.of(Math.round(ms * MILLI))
                    : OptionalLong.empty();
        } catch (NumberFormatException e) {
            return OptionalLong.empty();
        }
    }

    private void respond() {
        List<OnBus> timed = new ArrayList<>();
        List<Traffic> traffic = new ArrayList<>();
        Set<Long> taken = new HashSet<>();
        for (OnBus m : byName.values()) {
            long priority = Traffic.priority(m.message().id(), m.message().extended());
            if (m.timed() && taken.add(priority)) {
                long period = m.shortest().getAsLong();
                traffic.add(new Traffic(priority, plan.time(longest(m.message())), period, m.jitter()));
                timed.add(m);
                bareLoad += plan.time(shortest(m.message())) / (double) period;
            }
        }
        Schedule schedule = Schedule.of(traffic, plan.bitTime());
        load = schedule.load();
        for (int i = 0; i < timed.size(); i++) {
            responses.put(timed.get(i).message().name(), schedule.response(i));
        }
    }

    private static int longest(Message m) {
        return FrameLength.longest(m.extended(), m.length());
    }

    private static int shortest(Message m) {
        return FrameLength.shortest(m.extended(), m.length());
    }

    NetworkPlan plan() {
        return plan;
    }

    String name() {
        return plan.name();
    }

    DbcFile dbc() {
        return plan.dbc();
    }

    Place place() {
        return plan.place();
    }

    /** Everything that is sent, in the order of the DBC file. */
    List<OnBus> messages() {
        return List.copyOf(byName.values());
    }

    Optional<OnBus> message(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** Share of the bus with the longest frames. */
    double load() {
        return load;
    }

    /** Share of the bus without any stuff bit. */
    double bareLoad() {
        return bareLoad;
    }

    /** Whether it takes part in load and response times: its period is known and its identifier its own. */
    boolean counted(OnBus message) {
        return responses.containsKey(message.message().name());
    }

    /** Worst-case response time, ns; {@link Schedule#UNBOUNDED} where there is none or no period is known. */
    long response(OnBus message) {
        return responses.getOrDefault(message.message().name(), Schedule.UNBOUNDED);
    }
}
