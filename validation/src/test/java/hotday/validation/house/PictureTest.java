package hotday.validation.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The picture of modules and packages in ARCHITECTURE.md is the one drawn from the classes. */
@AnalyzeClasses(packages = "hotday", importOptions = ImportOption.DoNotIncludeTests.class)
final class PictureTest {
    private static final String BEGINS = "<!-- picture: drawn by PictureTest -->\n```\n";
    private static final String ENDS = "```\n";

    @ArchTest
    static void picture_in_the_file_is_the_picture_of_the_code(JavaClasses classes) throws IOException {
        String drawn = Picture.of(classes);
        System.out.println(drawn);
        Path root = Path.of(System.getProperty("hotday.root", ".."));
        Path copy = root.resolve("validation/target/picture.txt");
        Files.createDirectories(copy.getParent());
        Files.writeString(copy, drawn);
        assertThat(pictureIn(Files.readString(root.resolve("ARCHITECTURE.md"))))
                .as("ARCHITECTURE.md no longer shows the code; put %s there", copy)
                .isEqualTo(drawn);
    }

    private static String pictureIn(String text) {
        int begin = text.indexOf(BEGINS);
        assertThat(begin).as("the line before the picture in ARCHITECTURE.md").isNotNegative();
        int from = begin + BEGINS.length();
        return text.substring(from, text.indexOf(ENDS, from));
    }
}
