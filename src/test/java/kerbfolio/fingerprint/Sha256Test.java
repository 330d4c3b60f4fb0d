package kerbfolio.fingerprint;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class Sha256Test {
    @TempDir
    private Path folder = Path.of("");

    /** The one-block example that NIST publishes for FIPS 180-4. */
    @Test
    void theHashIsThatOfTheStandard() throws IOException {
        String published = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        assertEquals(published, Sha256.of("abc".getBytes(UTF_8)));
        assertEquals(published, Sha256.of(Files.writeString(folder.resolve("abc"), "abc")));
    }

    /** The expected value is what {@code sha256sum} (coreutils) prints of its own list of the two files. */
    @Test
    void aFoldersHashIsThatOfTheListOfItsFiles() throws IOException {
        Files.writeString(folder.resolve("b.ftlx"), "first\n");
        Files.writeString(Files.createDirectory(folder.resolve("sub")).resolve("a.css"), "second\n");
        String list = "e9de4b24fb2a6e9f82ebe24afa5b6b25bfed9bd61abe14266f19451a7896f1de";
        assertEquals(list, Sha256.ofTemplates(folder));
        Files.writeString(folder.resolve("b.ftlx~"), "what an editor leaves");
        assertEquals(list, Sha256.ofTemplates(folder));
        Path link = Files.createSymbolicLink(folder.resolve("link"), folder);
        assertEquals(list, Sha256.ofTemplates(link));
        Files.move(folder.resolve("b.ftlx"), folder.resolve("c.ftlx"));
        assertNotEquals(list, Sha256.ofTemplates(folder));
    }

    @Test
    void aFolderThatIsNoneOrAWholeDiskIsRefused() throws IOException {
        assertTrue(assertThrows(FileSystemException.class, () -> Sha256.ofTemplates(folder.resolve("none")))
                .getReason()
                .contains("no such folder"));
        for (int i = 0; i <= 1000; i++) {
            Files.createFile(folder.resolve("f" + i));
        }
        assertTrue(assertThrows(FileSystemException.class, () -> Sha256.ofTemplates(folder))
                .getReason()
                .contains("more than 1000 files"));
    }
}
