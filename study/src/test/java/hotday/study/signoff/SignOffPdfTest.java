package hotday.study.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Finding;
import hotday.study.demo.DemoShop;
import hotday.study.prove.Proof;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.sheet.BuildSheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sign-off document, read back by a PDF reader. */
class SignOffPdfTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 14);
    /** Half of what a stroke or a bearing may reach beyond the paper, points. */
    private static final double SLACK = 1.0;

    @TempDir
    private Path folder;

    private byte[] written(String build, Proof proof) throws IOException {
        DemoShop shop = DemoShop.create(folder);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SignOffPdf.write(BuildSheet.read(shop.build(build)), proof, "0.1.0", DAY, out);
        return out.toByteArray();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private static int pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    private static void allTextOnThePaper(byte[] pdf) throws IOException {
        List<String> outside = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    double left = text.getXDirAdj();
                    double right = left + text.getWidthDirAdj();
                    double y = text.getYDirAdj();
                    boolean inside = left >= Pages.LEFT - SLACK
                            && right <= Pages.LEFT + Pages.WIDTH + SLACK
                            && y >= 20.0
                            && y <= text.getPageHeight() - 20.0;
                    if (!inside && !text.getUnicode().isBlank()) {
                        outside.add(text.getUnicode() + " at " + left + " to " + right + ", " + y);
                    }
                    super.processTextPosition(text);
                }
            }.getText(document);
        }
        assertThat(outside).isEmpty();
    }

    @Test
    void holdsCasesUnitsCautionsAndPageNumbers() throws IOException {
        byte[] pdf = written("oxbow", MadeProof.of("Oxbow", "mild day", 2, List.of()));
        String text = text(pdf);
        assertThat(text)
                .contains(StandardCases.steady().stream().map(Case::title).toList())
                .contains("degC", "kW", "kg", "mm", "Measured and modelled coolant", "Made 2026-03-14", "hotday 0.1.0")
                .contains("page 1 of " + pages(pdf), "page " + pages(pdf) + " of " + pages(pdf))
                .contains("bar", "coolant temperature gives way first", "not a warranty");
        for (String caution : Cautions.ALL) {
            assertThat(text).contains(caution.replaceAll("\\s+", " "));
        }
        allTextOnThePaper(pdf);
    }

    @Test
    void speaksTheUnitsOfTheSheet() throws IOException {
        String text = text(written("heron", MadeProof.of("Heron", "mild day", 1, List.of())));
        // 311.15 K = 38 degC = 100.4 degF; 1.25 K = 2.25 degF
        assertThat(text).contains("100.4 degF", "psi", "2.3 degF");
    }

    @Test
    void carriesOneFontInsideIt() throws IOException {
        try (PDDocument document = Loader.loadPDF(written("oxbow", MadeProof.of("Oxbow", "mild day", 2, List.of())))) {
            Set<String> names = new HashSet<>();
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).isTrue();
                    names.add(font.getName());
                }
            }
            assertThat(names).hasSize(1);
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Sign-off: Oxbow");
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(595.28f, within(0.1f)); // A4
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 10})
    void takesAnyNumberOfPredictedRuns(int predicted) throws IOException {
        byte[] pdf = written("oxbow", MadeProof.of("Oxbow", "drive", predicted, List.of()));
        String text = text(pdf);
        assertThat(text)
                .contains("page 1 of " + pages(pdf))
                .doesNotContain("NaN")
                .doesNotContain("Infinity");
        for (int i = 1; i <= predicted; i++) {
            assertThat(text).contains("drive " + i + " (predicted from its inputs)");
        }
        allTextOnThePaper(pdf);
    }

    @Test
    void longNamesStayOnThePaper() throws IOException {
        String longName = "The estate of the sixties with the big six and the new automatic "
                .repeat(4)
                .strip();
        String noBlank = "run_of_the_blue_pick-up_".repeat(12);
        byte[] pdf = written("oxbow", MadeProof.of(longName, noBlank, 3, List.of()));
        allTextOnThePaper(pdf);
        assertThat(text(pdf)).contains(longName); // the title goes over several lines
    }

    @Test
    void oddCharactersAreReplacedAndBreakNothing() throws IOException {
        String odd = "Kr\u00e4he \u0001\t\u6f22 \ud83d\ude97 \ud83d 100 %s \\n $1 \u05d0";
        Finding finding = Finding.warning("odd", "look at " + odd);
        byte[] pdf = written("oxbow", MadeProof.of(odd, odd, 1, List.of(finding)));
        assertThat(text(pdf)).contains("Kr\u00e4he", "100 %s", "$1");
        allTextOnThePaper(pdf);
    }

    @Test
    void manyFindingsTurnPages() throws IOException {
        List<Finding> findings = java.util.stream.IntStream.range(0, 120)
                .mapToObj(i -> Finding.warning("many", "finding number " + i + " of a long list"))
                .toList();
        byte[] pdf = written("oxbow", MadeProof.of("Oxbow", "drive", 0, findings));
        assertThat(text(pdf)).contains("finding number 0 of", "finding number 119 of");
        allTextOnThePaper(pdf);
    }
}
