package kerbfolio;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.lang.conditions.ArchConditions.haveModifier;
import static com.tngtech.archunit.lang.conditions.ArchConditions.haveOnlyFinalFields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;

/** One street, no way back: which package may use which, and where each library lives. */
@AnalyzeClasses(packages = "kerbfolio", importOptions = DoNotIncludeTests.class)
class LayeringTest {
    /** A package, where it lies, and what it may use besides itself; lowest first. */
    private record Layer(String name, String lies, String mayUse) {
        Layer(String name, String mayUse) {
            this(name, "kerbfolio." + name + "..", mayUse);
        }
    }

    private static final List<Layer> STREET = List.of(
            new Layer("quantity", ""),
            new Layer("source", ""),
            new Layer("formula", "quantity source"),
            new Layer("reading", "quantity"),
            new Layer("job", "quantity reading"),
            new Layer("car", "quantity source formula job"),
            new Layer("check", "quantity source formula reading job car"),
            new Layer("trades", "kerbfolio.checks.*..", "quantity source formula job car check"),
            new Layer("checks", "kerbfolio.checks", "quantity source formula job car check trades"),
            new Layer("procedure", "quantity source formula job car check"),
            new Layer("release", "quantity source formula reading job car check"),
            new Layer("dossier", "quantity source formula reading job car check checks procedure release"),
            new Layer("figure", "quantity source formula job car check procedure release dossier"),
            new Layer("photo", "reading job"),
            new Layer("pdf", "quantity source formula reading job car check procedure release dossier figure photo"),
            new Layer("workbook", "quantity source formula reading job car check procedure release dossier figure"),
            new Layer("fingerprint", "quantity source reading job check release dossier figure photo pdf workbook"),
            new Layer(
                    "cli",
                    "quantity source formula reading job car check checks procedure release dossier figure photo pdf"
                            + " workbook fingerprint"),
            new Layer("main", "kerbfolio", "cli"));

    /** The one package that may touch each library. */
    private static final Map<String, List<String>> LIBRARIES = Map.ofEntries(
            entry("reading", List.of("com.fasterxml..", "org.yaml..")),
            entry("car", List.of("org.jgrapht..", "org.apache.commons.math3..")),
            entry("figure", List.of("org.jfree..", "org.apache.fontbox..", "org.apache.pdfbox..")),
            entry("pdf", List.of("freemarker..", "org.xhtmlrenderer..", "com.lowagie..", "org.librepdf..")),
            entry(
                    "workbook",
                    List.of("org.apache.poi..", "org.apache.xmlbeans..", "org.openxmlformats..", "com.microsoft..")),
            entry("photo", List.of("net.coobird..")),
            entry("cli", List.of("picocli..")));

    /** What comes with the language, and the null annotations. */
    private static final List<String> PLATFORM =
            List.of("java..", "javax..", "org.w3c.dom..", "org.xml.sax..", "org.jspecify..");

    @ArchTest
    static final ArchRule arrowsRunDownward = street();

    @ArchTest
    static final ArchRule noPackageLeadsBackToItself =
            slices().matching("kerbfolio.(**)").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule tradesNeverUseEachOther = slices().matching("kerbfolio.checks.(*)..")
            .should()
            .notDependOnEachOther()
            .allowEmptyShould(true)
            .because("what two trades share belongs in the car");

    @ArchTest
    static final ArchRule theFoundationStandsOnTheLanguageAlone = classes()
            .that()
            .resideInAnyPackage("kerbfolio.quantity..", "kerbfolio.source..", "kerbfolio.formula..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("java..", "org.jspecify..", "kerbfolio..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule noLibraryComesInUnannounced = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(Stream.concat(
                            Stream.concat(Stream.of("kerbfolio.."), PLATFORM.stream()),
                            LIBRARIES.values().stream().flatMap(List::stream))
                    .toArray(String[]::new))
            .allowEmptyShould(true);

    @ArchTest
    static void eachLibraryLivesInOnePackage(JavaClasses all) {
        LIBRARIES.forEach((home, library) -> noClasses()
                .that()
                .resideOutsideOfPackage("kerbfolio." + home + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(library.toArray(String[]::new))
                .allowEmptyShould(true)
                .because("only " + home + " knows that library")
                .check(all));
    }

    @ArchTest
    static final ArchRule everyPackageKeepsNullOut = classes()
            .should(ArchCondition.from(describe(
                    "lie in a package marked @NullMarked",
                    type -> type.getPackage().isAnnotatedWith(NullMarked.class))))
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule aCheckHoldsNoState = classes()
            .that()
            .implement(simpleName("Check"))
            .should(haveModifier(JavaModifier.FINAL))
            .andShould(haveOnlyFinalFields())
            .allowEmptyShould(true)
            .because("the same readings give the same findings, in any order");

    @ArchTest
    static final ArchRule aNameSaysWhatAThingIs = noClasses()
            .should()
            .haveNameMatching(".*(Manager|Helper|Util|Utils|Impl|Service|Factory|Data|Info)")
            .allowEmptyShould(true);

    private static ArchRule street() {
        var street = layeredArchitecture().consideringOnlyDependenciesInLayers().withOptionalLayers(true);
        for (Layer layer : STREET) {
            street = street.layer(layer.name()).definedBy(layer.lies());
        }
        for (Layer layer : STREET) {
            street = layer.mayUse().isEmpty()
                    ? street.whereLayer(layer.name()).mayNotAccessAnyLayer()
                    : street.whereLayer(layer.name())
                            .mayOnlyAccessLayers(layer.mayUse().split(" "));
        }
        return street.ensureAllClassesAreContainedInArchitecture()
                .allowEmptyShould(true)
                .as("A package uses only what its line of the street allows, and every class lies in a known package");
    }
}
