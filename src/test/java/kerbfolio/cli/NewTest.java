package kerbfolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import kerbfolio.job.JobFile;
import kerbfolio.job.Tier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewTest {
    @TempDir
    private Path folder = Path.of("");

    private Path file() {
        return folder.resolve("0123.yaml");
    }

    private Typed write(String... options) {
        var arguments = new String[options.length + 2];
        arguments[0] = "new";
        arguments[1] = file().toString();
        System.arraycopy(options, 0, arguments, 2, options.length);
        return Typed.of(arguments);
    }

    @Test
    void itWritesAJobOfTheFirstTierThatPassesTheReader() throws Exception {
        Typed typed = write("--number", "0123-a");
        assertEquals(0, typed.exitCode());
        assertTrue(typed.out().startsWith("Wrote " + file()), typed.out());
        var job = JobFile.read(file()).job();
        assertEquals("0123-a", job.job().number());
        assertEquals(Tier.FIRST, job.job().tier());
        assertEquals(1, Typed.of("check", file().toString()).exitCode());
    }

    /** Whoever takes away every # before a line has a job that passes the reader too. */
    @Test
    void everythingItOffersIsWrittenAsTheReaderTakesIt() throws Exception {
        write();
        String filled = Files.readString(file())
                .lines()
                .map(line -> line.replaceFirst("^( *)# (?=(- |[a-z-]+:))", "$1"))
                .collect(Collectors.joining("\n", "", "\n"));
        Files.writeString(file(), filled);
        var job = JobFile.read(file()).job();
        assertEquals(5, job.parts().size());
        assertEquals(4, job.links().size());
        assertTrue(job.pack() != null && job.readings() != null);
        assertEquals(1, job.removed().size());
        assertEquals(1, job.punchList().size());
        assertTrue(job.vehicle() != null && job.vehicle().ratings() != null);
        assertTrue(job.weighings() != null && job.weighings().asReceived() != null);
        assertTrue(filled.lines().noneMatch(line -> line.matches(" +# .*")), filled);
    }

    @Test
    void itLeavesAnExistingFileAlone() throws IOException {
        Files.writeString(file(), "mine");
        Typed typed = write();
        assertEquals(3, typed.exitCode());
        assertEquals(file() + " exists already and was left alone", typed.sentence());
        assertEquals("mine", Files.readString(file()));
    }

    @Test
    void aNumberThatCannotNameAFolderIsRefused() {
        for (String number : new String[] {"", "#12", "../12", "a b", "12-", "x".repeat(41)}) {
            Typed typed = write("--number", number);
            assertEquals(2, typed.exitCode(), number);
            assertTrue(typed.err().contains("--number takes"), typed.err());
            assertFalse(Files.exists(file()), number);
        }
    }

    @Test
    void itMakesNoFolders() {
        Typed typed = Typed.of("new", folder.resolve("no/such/job.yaml").toString());
        assertEquals(3, typed.exitCode());
        assertTrue(typed.sentence().endsWith("there is no such folder"), typed.err());
    }
}
