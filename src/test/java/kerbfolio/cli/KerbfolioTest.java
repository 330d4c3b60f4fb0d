package kerbfolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class KerbfolioTest {
    @Test
    void helpNamesEveryCommandAndEveryExitCode() {
        Typed typed = Typed.of("--help");
        assertEquals(0, typed.exitCode());
        for (String line : List.of(
                "Usage: kerbfolio [-hV] COMMAND",
                "issue    Reruns every check and writes the dossier",
                "check    Reruns every check and prints findings and gates; writes nothing.",
                "new      Writes a commented starter job of the first tier.",
                "explain  Prints a check's question, formula, symbols, limit and source.",
                "prove    Reruns the job inside a dossier and says whether its record holds.",
                "0   nothing holds any gate; a record holds",
                "1   written, and some gate is held or not examined; a record does not hold",
                "2   job file, template, dossier or command is wrong; nothing is written",
                "3   something could not be read or written")) {
            assertTrue(typed.out().contains(line), line + "\n" + typed.out());
        }
        assertTrue(typed.out().lines().allMatch(line -> line.length() <= 100), typed.out());
    }

    @Test
    void eachCommandHelpsItself() {
        for (String command : List.of("issue", "check", "prove", "new", "explain")) {
            Typed typed = Typed.of(command, "--help");
            assertEquals(0, typed.exitCode());
            assertTrue(typed.out().startsWith("Usage: kerbfolio " + command), typed.out());
        }
    }

    @Test
    void theVersionIsTheBuilds() {
        Typed typed = Typed.of("--version");
        assertTrue(typed.out().matches("Kerbfolio \\d+\\.\\d+\\.\\d+\\s*"), typed.out());
        assertEquals(typed.out().strip(), Kerbfolio.program());
    }

    @Test
    void aCommandThatIsNoneShowsWhatThereIs() {
        for (String[] wrong : List.of(
                new String[] {},
                new String[] {"chek"},
                new String[] {"check"},
                new String[] {"check", "a.yaml", "b.yaml"},
                new String[] {"check", "--colour", "a.yaml"})) {
            Typed typed = Typed.of(wrong);
            assertEquals(2, typed.exitCode(), String.join(" ", wrong));
            assertEquals("", typed.out());
            assertTrue(typed.err().contains("kerbfolio"), typed.err());
        }
        assertTrue(Typed.of("chek").err().contains("Did you mean: kerbfolio check?"));
    }
}
