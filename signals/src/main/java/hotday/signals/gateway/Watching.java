package hotday.signals.gateway;

import hotday.signals.dbc.Message;
import hotday.signals.dbc.Signal;
import hotday.signals.expect.Watched;
import hotday.signals.translator.Program.Source;
import java.util.ArrayList;
import java.util.List;

/** Signals of networks as they are looked at while frames pass. */
final class Watching {
    private Watching() {}

    static List<Watched> all(List<NetworkPlan> networks) {
        List<Watched> all = new ArrayList<>();
        for (int n = 0; n < networks.size(); n++) {
            for (Message message : networks.get(n).dbc().messages()) {
                for (Signal signal : message.signals()) {
                    if (Source.exists(message, signal)) {
                        all.add(of(n, networks.get(n).name(), message, signal, signal.unit()));
                    }
                }
            }
        }
        return all;
    }

    /** @param unit of the signal, where its file says another */
    static Watched of(int network, String name, Message message, Signal s, String unit) {
        Scale scale = Scale.of(s);
        return new Watched(
                name + "." + message.name() + "." + s.name(),
                unit,
                network,
                message.id(),
                message.extended(),
                Source.of(message, s),
                s.form(),
                s.factor(),
                s.offset(),
                (long) scale.rawLow(),
                (long) scale.rawHigh(),
                s.words());
    }
}
