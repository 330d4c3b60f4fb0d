package kerbfolio.formula;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import kerbfolio.quantity.Unit;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every formula of the program: its units come out as declared, each symbol says what it is, and all of it can be set. */
class FormulaUnitsTest {
    @TestFactory
    Stream<DynamicTest> theUnitsOfEveryFormulaComeOutAsDeclared() {
        return eachFormula(each -> assertDoesNotThrow(each.formula()::checkUnits, each::toString));
    }

    @TestFactory
    Stream<DynamicTest> everySymbolHasAMeaningAndAUnit() {
        return eachFormula(each -> {
            var declared = new ArrayList<>(each.formula().symbols());
            declared.add(each.formula().result());
            for (Declared symbol : declared) {
                assertFalse(symbol.meaning().isBlank(), () -> symbol.symbol() + " means nothing in " + each);
                assertTrue(
                        symbol.unit().equals(Unit.ONE) || !symbol.unit().text().isBlank(),
                        () -> symbol.symbol() + " has no unit in " + each);
            }
            assertFalse(each.formula().citations().isEmpty(), each::toString);
        });
    }

    @TestFactory
    Stream<DynamicTest> everySignOfEveryFormulaIsInTheFontsOfThePaper() throws IOException, FontFormatException {
        List<Font> fonts = List.of(
                font("/liberation/LiberationSans-Regular.ttf"),
                font("/net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf"));
        return eachFormula(each -> {
            var pieces = new ArrayList<>(each.formula().printedNeeds());
            pieces.add(each.formula().printed());
            each.formula()
                    .symbols()
                    .forEach(symbol ->
                            pieces.add(Piece.leaf(Piece.Kind.UNIT, symbol.unit().text())));
            String signs =
                    String.join("", pieces.stream().map(FormulaUnitsTest::signs).toList());
            assertEquals("", missing(signs, fonts), each::toString);
        });
    }

    /** A formula made anywhere else would escape the walk. */
    @Test
    void aFormulaIsAlwaysAConstantOfItsClass() {
        var makers = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("kerbfolio").stream()
                        .flatMap(type -> type.getMethodCallsFromSelf().stream())
                        .filter(call -> call.getTargetOwner().isEquivalentTo(FormulaBuilder.class)
                                && call.getName().equals("build")
                                && !call.getOrigin().getName().equals("<clinit>"))
                        .map(Object::toString)
                        .toList();
        assertEquals(List.of(), makers);
    }

    private static Stream<DynamicTest> eachFormula(Consumer<EveryFormula> test) {
        return EveryFormula.ofTheProgram().stream().map(each -> dynamicTest(each.toString(), () -> test.accept(each)));
    }

    private static String signs(Piece piece) {
        return piece.text()
                + String.join(
                        "", piece.parts().stream().map(FormulaUnitsTest::signs).toList());
    }

    private static String missing(String signs, List<Font> fonts) {
        return signs.codePoints()
                .filter(sign -> fonts.stream().noneMatch(font -> font.canDisplay(sign)))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static Font font(String path) throws IOException, FontFormatException {
        try (InputStream in = FormulaUnitsTest.class.getResourceAsStream(path)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        }
    }
}
