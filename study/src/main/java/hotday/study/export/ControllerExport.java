package hotday.study.export;

import hotday.vehicle.controller.CompressorLimits;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Fan controller and compressor rules as C99: a header and a source each, a runner of test vectors and vectors. */
public final class ControllerExport {
    private static final int TICKS = 5_000;
    private static final long SEED = 1;

    private ControllerExport() {}

    /** {@link #write(String, Schedule, CompressorLimits, Path)} of a build: its schedule, and the limits of its circuit. */
    public static List<String> write(String title, VehicleSpec build, Path folder) {
        return write(title, Schedule.of(build.schedule()), CompressorLimits.of(build), folder);
    }

    /**
     * Writes the files into a folder, which is made where it is not there.
     *
     * @param title what it is for
     * @return their names
     */
    public static List<String> write(String title, Schedule schedule, CompressorLimits limits, Path folder) {
        Map<String, String> files = new LinkedHashMap<>();
        Map<String, String> places = Map.of(
                "TITLE", Template.comment(title),
                "SCHEDULE", ControllerNumbers.of(schedule),
                "LIMITS", ControllerNumbers.of(limits),
                "INPUTS", schedule.hasChargeAir() ? "eight" : "seven");
        for (String name : List.of(
                "fan_controller.h",
                "fan_controller.c",
                "compressor_rules.h",
                "compressor_rules.c",
                "controller_test.c")) {
            String filled = Template.filled(name, places);
            String without = Template.marked(filled, "NO_CHARGE_AIR", !schedule.hasChargeAir());
            files.put(name, Template.marked(without, "CHARGE_AIR", schedule.hasChargeAir()));
        }
        ControllerVectors vectors = new ControllerVectors(schedule, limits);
        vectors.random(TICKS, SEED);
        files.put("controller_vectors.txt", vectors.text());
        Template.write(folder, files);
        return List.copyOf(files.keySet());
    }
}
