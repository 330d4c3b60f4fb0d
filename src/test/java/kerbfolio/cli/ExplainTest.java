package kerbfolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import kerbfolio.JobText;
import kerbfolio.check.Check;
import kerbfolio.check.Examination;
import kerbfolio.check.Limit;
import kerbfolio.checks.CheckList;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Working;
import org.junit.jupiter.api.Test;

class ExplainTest {
    private static String explain(String... arguments) {
        Typed typed = Typed.of(arguments);
        assertEquals(0, typed.exitCode(), typed.err());
        assertEquals("", typed.err());
        return typed.out();
    }

    @Test
    void everyCheckExplainsItself() {
        for (Check check : CheckList.ALL) {
            String text = explain("explain", check.id());
            assertTrue(text.startsWith(check.question() + "\n"), text);
            assertTrue(text.contains("trade: " + check.trade()), text);
            var missing = new ArrayList<String>();
            for (Examination.Row row : JobText.blank().examined(check).rows()) {
                row.finding().working().map(Working::formula).ifPresent(formula -> expect(formula, text, missing));
                row.finding().limit().ifPresent(limit -> expect(limit, text, missing));
            }
            assertEquals(List.of(), missing, text);
        }
    }

    private static void expect(Formula formula, String text, List<String> missing) {
        expect("formula: " + formula.text() + "\n", text, missing);
        formula.symbols().forEach(symbol -> expect("    " + symbol.symbol() + "  " + symbol.meaning(), text, missing));
        formula.constants().forEach(constant -> expect("    " + constant.symbol() + " = ", text, missing));
        formula.citations().forEach(citation -> expect("source: " + citation + "\n", text, missing));
    }

    private static void expect(Limit limit, String text, List<String> missing) {
        expect("limit (" + limit.set() + "): " + limit.bound() + " " + limit.value(), text, missing);
        expect("    " + limit.origin() + "\n", text, missing);
    }

    private static void expect(String words, String text, List<String> missing) {
        if (!text.contains(words)) {
            missing.add(words);
        }
    }

    @Test
    void theFormulasBehindAFormulaAreShownToo() {
        String text = explain("explain", "seated-gross-margin");
        assertTrue(text.indexOf("formula: M = R - m") < text.indexOf("formula: m_s = m + n*m_p"), text);
        assertTrue(text.contains("limit (un-ece): at least 75 kg, mass of one occupant"), text);
    }

    @Test
    void anotherSetShowsItsOwnLimit() {
        String text = explain("explain", "seated-gross-margin", "--set", "us-federal");
        assertTrue(text.contains("limit (us-federal): at least 68 kg, mass of one occupant"), text);
    }

    @Test
    void withoutANameAllChecksAreListed() {
        String text = explain("explain");
        assertEquals(CheckList.ALL.size(), text.lines().count());
        for (Check check : CheckList.ALL) {
            assertTrue(text.contains(check.id() + "  " + check.question() + "\n"), check.id());
        }
    }

    @Test
    void aCheckThatIsNoneIsRefused() {
        Typed typed = Typed.of("explain", "axle-margn");
        assertEquals(2, typed.exitCode());
        assertEquals("", typed.out());
        assertTrue(typed.sentence().startsWith("There is no check `axle-margn`"), typed.err());
    }

    @Test
    void aSetThatIsNoneIsRefusedWithoutAPlaceInAFileNobodyWrote() {
        Typed typed = Typed.of("explain", "axle-margin", "--set", "nowhere");
        assertEquals(2, typed.exitCode());
        assertTrue(typed.sentence().startsWith("--set: there is no requirement set `nowhere`"), typed.err());
        assertEquals(2, Typed.of("explain", "axle-margin", "--set", "../un-ece").exitCode());
    }
}
