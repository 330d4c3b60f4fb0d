package kerbfolio.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IssuedFolderTest {
    @TempDir
    private Path parent = Path.of("");

    private Path folder() {
        return parent.resolve("dossiers/1-A");
    }

    private boolean write(String content, boolean replace) throws IOException {
        return new IssuedFolder(folder())
                .write(Map.of("a.txt", content.getBytes(UTF_8), "b.txt", new byte[] {1}), replace);
    }

    private List<String> beside() throws IOException {
        try (Stream<Path> files = Files.list(folder().resolve(".."))) {
            return files.map(path -> path.getFileName().toString()).toList();
        }
    }

    @Test
    void aDossierIsWrittenWholeWithNothingLeftBeside() throws IOException {
        assertTrue(write("one", false));
        assertEquals("one", Files.readString(folder().resolve("a.txt")));
        assertEquals(List.of("1-A"), beside());
    }

    @Test
    void theSameDossierIsNotWrittenTwice() throws IOException {
        write("one", false);
        assertFalse(write("one", false));
    }

    @Test
    void anotherDossierOfTheSameRevisionIsRefused() throws IOException {
        write("one", false);
        var refusal = assertThrows(FileAlreadyExistsException.class, () -> write("two", false));
        assertTrue(refusal.getReason().contains("raise the revision"), refusal.getReason());
        assertEquals("one", Files.readString(folder().resolve("a.txt")));
        assertEquals(List.of("1-A"), beside());
    }

    @Test
    void itIsReplacedOnlyWhenAsked() throws IOException {
        write("one", false);
        assertTrue(write("two", true));
        assertEquals("two", Files.readString(folder().resolve("a.txt")));
        assertEquals(List.of("1-A"), beside());
    }

    /** A signed scan somebody put there is never taken away with the old revision. */
    @Test
    void whatIsNotOfThisProgramKeepsTheFolder() throws IOException {
        write("one", false);
        Files.writeString(folder().resolve("signed.pdf"), "scan");
        var refusal = assertThrows(FileAlreadyExistsException.class, () -> write("two", true));
        assertTrue(refusal.getReason().contains("holds signed.pdf"), refusal.getReason());
        assertEquals("one", Files.readString(folder().resolve("a.txt")));
        assertTrue(Files.exists(folder().resolve("signed.pdf")));
    }

    @Test
    void aFileThatCannotBeWrittenLeavesTheOldDossierAsItWas() throws IOException {
        write("one", false);
        var failure = assertThrows(
                FileSystemException.class,
                () -> new IssuedFolder(folder()).write(Map.of("no/such/folder.txt", new byte[0]), true));
        assertEquals(folder().toString(), failure.getFile());
        assertEquals("one", Files.readString(folder().resolve("a.txt")));
        assertEquals(List.of("1-A"), beside());
    }
}
