package hotday.study.face;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.study.picture.FaceChart;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.sheet.BuildSheet;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class FacePictureTest {
    @TempDir
    private Path folder;

    private FacePicture picture;

    @BeforeEach
    void settle() throws IOException {
        BuildSheet sheet = BuildSheet.read(DemoShop.create(folder).build("oxbow"));
        picture = FacePicture.of(sheet, StandardCases.all().get(0));
    }

    @Test
    void everyCoreHasItsPanelInDepthOrder() {
        FaceChart chart = picture.chart();
        assertThat(chart.temperatures())
                .extracting(FaceChart.Panel::title)
                .containsExactly(
                        "Air reaching the gearbox cooler, degC",
                        "Air reaching the condenser, degC",
                        "Air reaching the charge-air cooler, degC",
                        "Air reaching the radiator, degC",
                        "Air leaving the radiator, degC");
        assertThat(chart.side()).extracting(FaceChart.Layer::name).first().isEqualTo("openings");
        int tiles = (chart.x().size() - 1) * (chart.y().size() - 1);
        assertThat(chart.speeds().values()).hasSize(tiles).allMatch(v -> v > -20 && v < 20);
        for (FaceChart.Panel panel : chart.temperatures()) {
            assertThat(panel.values()).hasSize(tiles).allMatch(v -> Double.isNaN(v) || v > 42 && v < 130);
        }
    }

    @Test
    void theSvgIsXmlWithANumberOnEveryTile() throws Exception {
        String svg = picture.svg();
        Document document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        List<Double> speeds = picture.chart().speeds().values();
        assertThat(document.getElementsByTagName("text").getLength()).isGreaterThan(3 * speeds.size());
        assertThat(svg).contains("Oxbow: Hot idle").doesNotContain("NaN").doesNotContain("null");
    }

    @Test
    void theNotesSayWhatTheAirDoes() {
        assertThat(picture.notes())
                .anyMatch(note -> note.startsWith("Air through the face"))
                .anyMatch(note -> note.contains("condenses at"))
                .anyMatch(note -> note.contains("fan drives the air"));
    }
}
