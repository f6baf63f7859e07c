package hotday.validation.house;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The one-way arrows between modules and what each module may know of the world outside. */
@AnalyzeClasses(packages = "hotday", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArrowsTest {
    private static final String[] BELOW_STUDY = {
        "hotday.core..", "hotday.physics..", "hotday.vehicle..", "hotday.signals.."
    };

    @ArchTest
    static final ArchRule CORE_SEES_NOBODY = seesOnly("core");

    @ArchTest
    static final ArchRule PHYSICS_SEES_CORE = seesOnly("physics", "core");

    @ArchTest
    static final ArchRule VEHICLE_SEES_PHYSICS = seesOnly("vehicle", "physics", "core");

    @ArchTest
    static final ArchRule SIGNALS_SEE_CORE = seesOnly("signals", "core");

    @ArchTest
    static final ArchRule STUDY_SEES_VEHICLE_AND_SIGNALS = seesOnly("study", "vehicle", "physics", "signals", "core");

    @ArchTest
    static final ArchRule EVERY_CLASS_STANDS_IN_A_MODULE = classes()
            .should()
            .resideInAnyPackage(
                    "hotday.core..",
                    "hotday.physics..",
                    "hotday.vehicle..",
                    "hotday.signals..",
                    "hotday.study..",
                    "hotday.app..")
            .because("a new module needs an arrow in this test and a box in the picture");

    @ArchTest
    static final ArchRule NO_CIRCLES_BETWEEN_PACKAGES =
            slices().matching("hotday.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule NUMBERS_KNOW_NO_DOCUMENTS_AND_NO_COMMAND_LINE = noClasses()
            .that(resideInAnyPackage(BELOW_STUDY))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("tools.jackson..", "picocli..", "org.apache.pdfbox..");

    @ArchTest
    static final ArchRule COMMAND_LINE_ONLY_IN_APP = noClasses()
            .that()
            .resideOutsideOfPackage("hotday.app..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("picocli..");

    @ArchTest
    static final ArchRule ONLY_APP_TALKS = noClasses()
            .that()
            .resideOutsideOfPackage("hotday.app..")
            .should(com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS)
            .orShould()
            .callMethod(System.class, "exit", int.class)
            .because("people are spoken to in app, and only the program's door ends the program");

    @ArchTest
    static final ArchRule NO_DRAWERS_FOR_EVERYTHING = noClasses()
            .should()
            .resideInAnyPackage("..util..", "..utils..", "..common..", "..helper..", "..manager..", "..impl..")
            .because("a package is named after what an engineer finds in it");

    private static ArchRule seesOnly(String module, String... below) {
        DescribedPredicate<JavaClass> allowed = resideInAPackage("hotday." + module + "..");
        for (String other : below) {
            allowed = allowed.or(resideInAPackage("hotday." + other + ".."));
        }
        return noClasses()
                .that()
                .resideInAPackage("hotday." + module + "..")
                .should()
                .dependOnClassesThat(resideInAPackage("hotday..").and(DescribedPredicate.not(allowed)))
                .as(module + " sees " + (below.length == 0 ? "no other module" : "only " + String.join(", ", below)))
                .allowEmptyShould(false);
    }
}
