package kerbfolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import kerbfolio.JobText;
import kerbfolio.fingerprint.Answer;
import kerbfolio.fingerprint.Proof;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IssueTest {
    @TempDir
    private Path folder = Path.of("");

    private Typed issue(JobText job) {
        return Typed.of("issue", job.writeTo(folder).toString(), "--out", folder.toString());
    }

    @Test
    void fourFilesAreWrittenOnce() throws IOException {
        Typed first = issue(JobText.blank());
        assertEquals("", first.err());
        assertTrue(first.out().matches("(?s).*Wrote \\S+1-1, fingerprint [0-9a-f]{4}(-[0-9a-f]{4}){3}\n"), first.out());
        try (Stream<Path> files = Files.list(folder.resolve("1-1"))) {
            assertEquals(
                    List.of("dossier.pdf", "dossier.xlsx", "findings.json", "fingerprint.json"),
                    files.map(file -> String.valueOf(file.getFileName()))
                            .sorted()
                            .toList());
        }
        assertTrue(issue(JobText.blank()).out().endsWith("holds exactly this already; nothing was written\n"));
        Typed other = issue(JobText.blank().with("job.phone", "\"1\""));
        assertEquals(3, other.exitCode());
        assertTrue(other.sentence().endsWith("raise the revision, or --replace"), other.err());
    }

    /** No bundled face has the sign; the paper shows that something is missing, and whoever issues it is told. */
    @Test
    void whatCannotBePrintedAsWrittenIsComplainedOf() {
        Typed typed = issue(JobText.blank().with("vehicle.description", "车 of 1984"));
        assertEquals(1, typed.exitCode(), typed.err());
        assertTrue(typed.err().contains("U+8F66"), typed.err());
    }

    @Test
    void aNameOutOfAPdfCommandsNoTerminal() {
        String text =
                Terminal.proof(new Proof(Answer.CHANGED, List.of("a file \u001b[2J\u009b1m was put inside"), "Ask."));
        assertFalse(text.contains("\u001b") || text.contains("\u009b"), text);
        assertTrue(text.contains("[2J1m was put inside"), text);
    }

    @Test
    void aTextThatTurnsDirectionIsPrintedWithoutTheSignThatTurnsIt() {
        Typed typed = issue(JobText.blank()
                .add("punch-list", "{ id: \"1\", text: \"hose \u202Esbur\", holds: road, owner: shop }"));
        assertTrue(typed.out().contains("punch list 1: hose sbur"), typed.out());
    }
}
