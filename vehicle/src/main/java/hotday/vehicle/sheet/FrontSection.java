package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.vehicle.airpath.Sealing;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.Locale;

/** The front end block: what the air meets before and behind the cores. */
final class FrontSection {
    private final TypedMap root;
    private final List<Assumption> assumptions;

    FrontSection(TypedMap root, List<Assumption> assumptions) {
        this.root = root;
        this.assumptions = assumptions;
    }

    VehicleSpec.FrontEnd frontEnd() {
        Section s = Section.optional(
                root,
                "front_end",
                assumptions,
                "ram_recovery",
                "base_pressure",
                "opening_area",
                "exit_loss",
                "draught_height",
                "sealing");
        double ram = s.value(
                "ram_recovery",
                Quantity.RATIO,
                "0 %",
                "100 %",
                "60 %",
                "0.3 to 0.7 over a real grille; textbook range, from memory");
        double base = s.value(
                "base_pressure",
                Quantity.NUMBER,
                "-1",
                "0.5",
                "-0.1",
                "outlet region -0.1 to -0.5; textbook range, from memory");
        double opening =
                s.value("opening_area", Quantity.AREA, "0.005 m2", "3 m2", "0.15 m2", "common practice, no source");
        double exit = s.value(
                "exit_loss",
                Quantity.NUMBER,
                "0",
                "100",
                "12",
                "grille, bay and exit over the dynamic pressure at the core; from memory");
        double height = s.value(
                "draught_height", Quantity.LENGTH, "0 m", "3 m", "0.4 m", "warm column behind the core; from memory");
        String sealing = s.word("sealing", "fair", "some gaps around the stack", "good", "fair", "poor");
        return new VehicleSpec.FrontEnd(
                ram, base, opening, exit, height, Sealing.valueOf(sealing.toUpperCase(Locale.ROOT)));
    }
}
