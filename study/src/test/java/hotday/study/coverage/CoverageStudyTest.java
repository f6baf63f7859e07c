package hotday.study.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CoverageStudyTest {
    @TempDir
    private Path folder;

    private Coverage study(String name, int cars, int threads) {
        DemoShop shop = DemoShop.create(folder.resolve("shop"));
        List<VehicleSpec> sheets = DemoShop.BUILDS.stream()
                .map(build -> BuildSheet.read(shop.build(build)).vehicle())
                .toList();
        return new CoverageStudy(sheets, folder.resolve(name), 11).of(cars, threads, share -> {});
    }

    /** The full study is a command; this is the same on few cars. The mild day tells much, whoever drives. */
    @Test
    @Tag("slow")
    void intervalsHoldTheTruthAndANumberOfThreadsChangesNothing() {
        Coverage two = study("two", 4, 2);
        assertThat(two.asked()).isEqualTo(20);
        assertThat(two.share()).isGreaterThan(0.6);
        assertThat(two.widthRatio()).isLessThan(0.6);
        assertThat(two.nextTests())
                .hasSize(2)
                .allSatisfy(t -> assertThat(t.narrowed()).isBetween(-0.5, 1.0));
        assertThat(study("one", 4, 1)).isEqualTo(two);
    }

    @Test
    void anEndOfTheSearchedRangeIsOpen() {
        assertThat(new CaseOutcome("hot-idle", 353.15, 340.0, 353.15, 300.0, 353.15).inside())
                .isTrue();
        assertThat(new CaseOutcome("hot-idle", 330.0, 340.0, 353.15, 300.0, 353.15).inside())
                .isFalse();
        assertThat(new CaseOutcome("hot-idle", 253.15, 253.15, 260.0, 253.15, 353.15).inside())
                .isTrue();
    }
}
