package hotday.vehicle.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CasesTest {
    /** 40 mph is 64.37 km/h: the accounts give both. */
    private static final double MILES_AND_KILOMETRES = 0.15; // m/s

    @TempDir
    private Path shop;

    private static Case named(List<Case> cases, String id) {
        return cases.stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
    }

    private Path write(String name, String id, String speed) throws IOException {
        Path file = shop.resolve("cases").resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(
                file,
                "case: " + id + "\ntitle: Own\nstart: settled\nsun: 0 W/m2\nhumidity: 40 %\nphases:\n  - {speed: "
                        + speed + "}\n");
    }

    @Test
    void everyShippedCaseReads() {
        assertThat(StandardCases.all())
                .extracting(Case::id)
                .containsExactly(
                        "hot-idle",
                        "city-crawl",
                        "motorway",
                        "loaded-climb",
                        "low-range-crawl",
                        "drop-to-idle",
                        "key-off-soak",
                        "city-trace",
                        "cold-morning");
        assertThat(StandardCases.steady()).isEqualTo(StandardCases.all().subList(0, 5));
    }

    /** Published accounts of SAE J2807: 5 percent, not below 40 mph, A/C at its coldest, outside air, full blower. */
    @Test
    void theLoadedClimbIsThatOfTheTowingPractice() {
        Case climb = named(StandardCases.all(), "loaded-climb");
        assertThat(climb.grade()).isCloseTo(0.05, within(1e-12));
        assertThat(climb.speed()).isCloseTo(40.0 * 0.44704, within(MILES_AND_KILOMETRES));
        assertThat(climb.first().conditioning()).isEqualTo(Case.Conditioning.OUTSIDE_AIR);
        assertThat(climb.first().blower()).isEqualTo(1.0);
    }

    @Test
    void whatComesAfterTheClimbStartsOnIt() {
        Case.Phase climb = named(StandardCases.all(), "loaded-climb").first();
        assertThat(named(StandardCases.all(), "drop-to-idle").first()).isEqualTo(climb);
        assertThat(named(StandardCases.all(), "key-off-soak").first()).isEqualTo(climb);
    }

    /** 20 to 30 km/h between stops of up to a minute: common practice, no source. */
    @Test
    void theCityTraceIsATown() {
        Trace trace =
                named(StandardCases.all(), "city-trace").phases().get(1).trace().orElseThrow();
        double distance = 0.0;
        double moving = 0.0;
        for (double t = 0.5; t < trace.duration(); t++) {
            distance += trace.speed(t);
            moving += trace.speed(t) > 0.0 ? 1.0 : 0.0;
            assertThat(Math.abs(trace.acceleration(t))).isLessThan(1.5); // m/s2
        }
        assertThat(trace.duration()).isBetween(540.0, 660.0);
        assertThat(distance / moving * 3.6).isBetween(20.0, 30.0);
        assertThat(moving / trace.duration()).isBetween(0.4, 0.8);
    }

    @Test
    void aShopWithoutCasesHasTheShippedOnes() {
        assertThat(Cases.of(shop.resolve("cases"))).isEqualTo(StandardCases.all());
        assertThat(Cases.ofBuild(shop.resolve("build.yaml"))).isEqualTo(StandardCases.all());
    }

    @Test
    void aShopsOwnCasesReplaceAndAdd() throws IOException {
        write("my-motorway.yaml", "motorway", "130 km/h");
        write("pass.yml", "pass-road", "40 km/h");
        List<Case> cases = Cases.ofBuild(shop.resolve("builds/heron/build.yaml"));
        assertThat(cases).hasSize(StandardCases.all().size() + 1);
        assertThat(cases.get(2).id()).isEqualTo("motorway");
        assertThat(cases.get(2).speed()).isCloseTo(130.0 / 3.6, within(1e-12));
        assertThat(cases.get(cases.size() - 1).id()).isEqualTo("pass-road");
    }

    @Test
    void twoFilesOfOneIdAndAllOtherFaultsAreToldAtOnce() throws IOException {
        Path first = write("a.yaml", "pass-road", "40 km/h");
        Path second = write("b.yaml", "pass-road", "50 km/h");
        Path broken = write("c.yaml", "hill", "50 m");
        InputException wrong = catchThrowableOfType(InputException.class, () -> Cases.of(shop.resolve("cases")));
        assertThat(wrong.findings()).extracting(Finding::key).containsExactly("case-twice", "unit-wrong");
        assertThat(wrong.findings().get(0).toString()).contains(first.toString(), second.toString());
        assertThat(wrong.findings().get(1).toString()).startsWith(broken + ":7:13");
    }
}
