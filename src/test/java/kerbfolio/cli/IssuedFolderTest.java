package kerbfolio.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import kerbfolio.Child;
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
        try (Stream<Path> files = Files.list(folder().getParent())) {
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

    /** Whatever stands in the dossier's place is called what it is, and left alone. */
    @Test
    void whatIsNoDossiersFolderIsSaidToBe() throws IOException {
        Path dossiers = Files.createDirectories(folder().getParent());
        stands(
                "is a link that leads to no folder; remove it",
                Files.createSymbolicLink(folder(), dossiers.resolve("x")));
        stands("is a file and no folder; move it away", Files.writeString(folder(), "a note"));
        stands("is an empty folder; remove it", Files.createDirectory(folder()));
        Path other = Files.createDirectory(parent.resolve("other"));
        stands("is a link to a folder; remove it, or give", Files.createSymbolicLink(folder(), other));
        Files.createDirectories(folder().resolve("a.txt"));
        var refusal = assertThrows(FileAlreadyExistsException.class, () -> write("one", true));
        assertTrue(refusal.getReason().startsWith("holds a folder a.txt, which is not of"), refusal.getReason());
        assertEquals(List.of("1-A"), beside());
    }

    private void stands(String reason, Path there) throws IOException {
        for (boolean replace : new boolean[] {false, true}) {
            var refusal = assertThrows(FileAlreadyExistsException.class, () -> write("one", replace));
            assertEquals(there.toString(), refusal.getFile());
            assertTrue(refusal.getReason().startsWith(reason), refusal.getReason());
            assertEquals(List.of("1-A"), beside());
        }
        Files.delete(there);
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

    /** The end of a run, as if the power had gone: what comes after it does not reach the disk. */
    private static final class Dead extends Error {
        private static final long serialVersionUID = 1L;
    }

    /** Writes a dossier in a run that dies before a step, and says whether it died. */
    private boolean dies(int step, String content) throws IOException {
        var steps = new AtomicInteger();
        var mortal = new Disk(() -> {
            if (steps.getAndIncrement() >= step) {
                throw new Dead();
            }
        });
        try {
            new IssuedFolder(folder(), mortal).write(files(content), true);
            return false;
        } catch (Dead dead) {
            return true;
        }
    }

    private static Map<String, byte[]> files(String content) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (String name : List.of("a.txt", "b.txt", "c.txt", "d.txt")) {
            files.put(name, (name + content).getBytes(UTF_8));
        }
        return files;
    }

    /** Which dossier lies in a folder, whole. */
    private static String whole(Path folder) throws IOException {
        for (String content : List.of("old", "new")) {
            boolean all = true;
            for (Map.Entry<String, byte[]> file : files(content).entrySet()) {
                Path path = folder.resolve(file.getKey());
                all &= Files.exists(path) && Arrays.equals(file.getValue(), Files.readAllBytes(path));
            }
            if (all) {
                return content;
            }
        }
        return "none";
    }

    /** The dossier that can be had: in its place, or, between the two moves, beside it. */
    private String found() throws IOException {
        if (Files.exists(folder())) {
            return whole(folder());
        }
        try (Stream<Path> all = Files.list(folder().getParent())) {
            Optional<Path> aside =
                    all.filter(path -> path.toString().endsWith(".old")).findFirst();
            return aside.isPresent() ? whole(aside.get()) : "none";
        }
    }

    @Test
    void whereverARunDiesTheEarlierDossierIsWholeOrTheNewOne() throws IOException {
        int step = 0;
        boolean died = true;
        for (; died; step++) {
            new IssuedFolder(folder()).write(files("old"), true);
            died = dies(step, "new");
            String found = found();
            assertTrue(List.of("old", "new").contains(found), "step " + step + ": " + found);
            // A run that asks for what is there already puts it in its place and clears up.
            assertFalse(new IssuedFolder(folder()).write(files(found), false), "step " + step);
            assertEquals(found, whole(folder()));
            assertEquals(List.of("1-A"), beside(), "step " + step);
        }
        // A folder, four files, two moves; the old dossier moved away, its four files, its folder and the lock deleted.
        assertEquals(14, step - 1);
    }

    @Test
    void whereverTheFirstRunDiesNothingHalfIsInItsPlace() throws IOException {
        boolean died = true;
        for (int step = 0; died; step++) {
            died = dies(step, "new");
            assertTrue(!Files.exists(folder()) || whole(folder()).equals("new"), "step " + step);
            new IssuedFolder(folder()).write(files("new"), false);
            assertEquals("new", whole(folder()));
            assertEquals(List.of("1-A"), beside(), "step " + step);
            for (String name : files("").keySet()) {
                Files.delete(folder().resolve(name));
            }
            Files.delete(folder());
        }
    }

    /** A run of its own that stands still before a step, for {@link #aRunThatLivesIsLeftAloneAndOneThatDiedIsNot}. */
    static final class Paused {
        private Paused() {}

        public static void main(String[] arguments) throws IOException {
            var steps = new AtomicInteger();
            var disk = new Disk(() -> {
                if (steps.incrementAndGet() == Integer.parseInt(arguments[1])) {
                    System.out.println("paused");
                    try {
                        System.in.read();
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                }
            });
            new IssuedFolder(Path.of(arguments[0]), disk).write(files("new"), true);
        }
    }

    @Test
    void aRunThatLivesIsLeftAloneAndOneThatDiedIsNot() throws Exception {
        new IssuedFolder(folder()).write(files("old"), false);
        // The sixth step is the first move; the seventh comes when the old dossier is beside its place.
        for (int step : new int[] {3, 7}) {
            Process other = Child.java().start(Paused.class, folder().toString(), String.valueOf(step));
            try (var says = other.inputReader(UTF_8)) {
                assertEquals("paused", says.readLine());
                var refusal = assertThrows(
                        FileSystemException.class, () -> new IssuedFolder(folder()).write(files("third"), true));
                assertTrue(refusal.getReason().contains("being written by another run"), refusal.getReason());
                assertEquals("old", found());
            } finally {
                other.destroyForcibly().waitFor();
            }
            assertFalse(new IssuedFolder(folder()).write(files("old"), true));
            assertEquals("old", whole(folder()));
            assertEquals(List.of("1-A"), beside());
        }
    }
}
