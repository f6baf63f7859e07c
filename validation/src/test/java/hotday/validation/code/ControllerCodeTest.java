package hotday.validation.code;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.typed.Overlay;
import hotday.study.demo.DemoShop;
import hotday.study.export.ControllerExport;
import hotday.study.export.ControllerVectors;
import hotday.vehicle.controller.CompressorLimits;
import hotday.vehicle.controller.DemandCurve;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.sheet.BuildSheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Exported fan controller and compressor rules beside the Java form. */
final class ControllerCodeTest {
    private static final String[] SOURCES = {"fan_controller.c", "compressor_rules.c", "controller_test.c"};
    private static final int SCHEDULES = 5;

    @TempDir
    private Path folder;

    @BeforeEach
    void aCompiler() {
        Gcc.require();
    }

    @Test
    void theVectorsThatGoWithABuildHold() throws IOException {
        Path build = DemoShop.create(folder.resolve("shop")).build("heron");
        Path code = folder.resolve("code");
        ControllerExport.write("a build", BuildSheet.read(build).vehicle(), code);
        Gcc.compile(code, SOURCES);
        Path vectors = code.resolve("controller_vectors.txt");
        Gcc.assertAsWritten(code, vectors);
        String wrong = Files.readString(vectors).replaceFirst("(?m)^f (.*) 0$", "f $1 1");
        Gcc.Answer answer = Gcc.vectors(code, "strict", Files.writeString(folder.resolve("wrong.txt"), wrong));
        assertThat(answer.status()).isEqualTo(1);
        assertThat(answer.text()).contains("line 1 does not come out as written");
    }

    /** Charge air is in the code of a schedule that has a curve for it, and in no other. */
    @Test
    void aBuildWithAChargeAirCurve() throws IOException {
        Path build = DemoShop.create(folder.resolve("shop")).build("oxbow");
        Path without = folder.resolve("without");
        ControllerExport.write("a build", BuildSheet.read(build).vehicle(), without);
        Path with = folder.resolve("with");
        Overlay curve = Overlay.of("test", List.of("schedule.charge_air=[[55 degC, 25 %], [70 degC, 100 %]]"));
        ControllerExport.write("a build", BuildSheet.read(build, curve).vehicle(), with);
        for (String name : new String[] {"fan_controller.h", "fan_controller.c", "controller_test.c"}) {
            assertThat(Files.readString(without.resolve(name)))
                    .doesNotContainIgnoringCase("charge_air")
                    .doesNotContain("@");
            assertThat(Files.readString(with.resolve(name)))
                    .contains("charge_air")
                    .doesNotContain("@");
        }
        Gcc.compile(with, SOURCES);
        Gcc.assertAsWritten(with, with.resolve("controller_vectors.txt"));
        assertThat(Files.readString(with.resolve("controller_vectors.txt")))
                .containsPattern("(?m)^f (-?\\d+ ){10}6 1 0$"); // charge air decides, the fan runs
        Gcc.compile(without, SOURCES);
        Gcc.assertAsWritten(without, without.resolve("controller_vectors.txt"));
    }

    @Test
    @Tag("slow")
    void aMillionRandomTicksOfStandardAndRandomSchedulesComeOutTheSame() throws IOException {
        SplittableRandom random = new SplittableRandom(8);
        compare("standard", Schedule.standard(), CompressorLimits.standard(), 1_000_000);
        for (int i = 0; i < SCHEDULES; i++) {
            compare("random" + i, schedule(random), limits(random), 1_000_000 / SCHEDULES);
        }
    }

    private void compare(String name, Schedule schedule, CompressorLimits limits, int ticks) throws IOException {
        Path code = folder.resolve(name);
        ControllerExport.write(name, schedule, limits, code);
        Gcc.compile(code, SOURCES);
        ControllerVectors vectors = new ControllerVectors(schedule, limits);
        vectors.random(ticks, 9);
        assertThat(vectors.fanOn()).as(name).isBetween(ticks / 1000L, ticks - ticks / 1000L);
        assertThat(vectors.engaged()).as(name).isPositive();
        Gcc.assertAsWritten(code, Files.writeString(code.resolve("vectors.txt"), vectors.text()));
    }

    private static Schedule schedule(SplittableRandom r) {
        int onCoolant = r.nextInt(850, 1050);
        int onGearbox = r.nextInt(850, 1050);
        int onHead = r.nextInt(900, 1800);
        int onCharge = r.nextInt(300, 800);
        int off = r.nextInt(1, 4000);
        int begin = r.nextInt(900, 1100);
        int below = r.nextInt(0, 100);
        return new Schedule(
                new Schedule.Curve(curve(r, 850, 1200), onCoolant, onCoolant - r.nextInt(1, 60)),
                new Schedule.Curve(curve(r, 850, 1200), onGearbox, onGearbox - r.nextInt(1, 60)),
                new Schedule.Curve(curve(r, 800, 2500), onHead, onHead - r.nextInt(1, 400)),
                r.nextInt(3) == 0
                        ? Schedule.Curve.NONE
                        : new Schedule.Curve(curve(r, 200, 1000), onCharge, onCharge - r.nextInt(1, 60)),
                new Schedule.Allowance(curve(r, 0, 1400), r.nextInt(950, 1150)),
                new Schedule.Floor(r.nextInt(0, 5000), r.nextInt(800, 1000), below, below + r.nextInt(0, 100)),
                new Schedule.Sensor(r.nextInt(1, 40), r.nextInt(1, 80), r.nextInt(0, 10_001), r.nextInt(-100, 1000)),
                new Schedule.Switching(
                        r.nextInt(0, 50),
                        off + r.nextInt(0, 2000),
                        off,
                        r.nextInt(0, 5000),
                        r.nextInt(0, 300),
                        r.nextInt(0, 100)),
                new Schedule.Slew(
                        r.nextInt(1, 2000),
                        r.nextInt(1, 500),
                        r.nextInt(0, 500),
                        r.nextInt(1, 1000),
                        r.nextInt(0, 3000)),
                new Schedule.AfterRun(
                        curve(r, 900, 1200),
                        begin,
                        begin - r.nextInt(1, 100),
                        r.nextInt(0, 2000),
                        r.nextInt(11_000, 13_000),
                        r.nextInt(1, 60)));
    }

    private static DemandCurve curve(SplittableRandom r, int low, int high) {
        int points = r.nextInt(1, 7);
        int[][] xy = new int[points][];
        for (int i = 0; i < points; i++) {
            int from = low + i * (high - low) / points;
            xy[i] = new int[] {r.nextInt(from, from + (high - low) / points), r.nextInt(0, DemandCurve.FULL + 1)};
        }
        return DemandCurve.of(xy);
    }

    private static CompressorLimits limits(SplittableRandom r) {
        return new CompressorLimits(
                r.nextInt(5, 15),
                new CompressorLimits.Engine(r.nextInt(0, 50), below(r, 300, 700)),
                new CompressorLimits.Freeze(r.nextInt(4) > 0, below(r, -20, 50)),
                above(r, 2000, 3200),
                new CompressorLimits.Suction(below(r, 130, 220), r.nextInt(0, 80)),
                new CompressorLimits.Throttle(above(r, 7000, 9500), r.nextInt(0, 80)),
                above(r, 1050, 1200),
                new CompressorLimits.Clutch(r.nextInt(0, 40), r.nextInt(0, 60), r.nextInt(0, 10), r.nextInt(0, 10)));
    }

    private static CompressorLimits.Above above(SplittableRandom r, int low, int high) {
        int from = r.nextInt(low, high);
        return new CompressorLimits.Above(from, from - r.nextInt(1, (high - low) / 2));
    }

    private static CompressorLimits.Below below(SplittableRandom r, int low, int high) {
        int from = r.nextInt(low, high);
        return new CompressorLimits.Below(from, from + r.nextInt(1, (high - low) / 2));
    }
}
