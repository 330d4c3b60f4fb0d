package kerbfolio.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.Child;
import kerbfolio.Main;
import kerbfolio.fingerprint.Issued;
import kerbfolio.fingerprint.Making;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same job gives the same bytes: one document after others, in another language, hour and alphabet, on another Java, on
 * a machine without fonts. A child that proves what was issued here has made the same PDF, with the same workbook and
 * findings inside.
 */
class DeterminismTest {
    private static final Path JOB = Path.of("sample-jobs/estate.yaml");

    @TempDir
    private Path folder = Path.of("");

    private static Map<String, byte[]> issued(Path job) throws Exception {
        return Rerun.of(job, new Making(Kerbfolio.program(), null)).issued().files();
    }

    private static void assertSame(Map<String, byte[]> expected, Map<String, byte[]> found) {
        assertEquals(List.copyOf(expected.keySet()), List.copyOf(found.keySet()));
        expected.forEach((name, content) -> assertArrayEquals(content, found.get(name), name));
    }

    private static Map<String, byte[]> read(Path dossier) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (String name : List.of(Issued.PDF, Issued.WORKBOOK, Issued.FINDINGS, Issued.FINGERPRINT)) {
            files.put(name, Files.readAllBytes(dossier.resolve(name)));
        }
        return files;
    }

    @Test
    void aDocumentDoesNotDependOnThoseMadeBeforeIt() throws Exception {
        Map<String, byte[]> first = issued(JOB);
        issued(Path.of("sample-jobs/pickup.yaml"));
        issued(Path.of("sample-jobs/first.yaml"));
        assertSame(first, issued(JOB));
    }

    /** With what it prints in UTF-8, although the machine takes texts for something else. */
    @Test
    void languageHourAndAlphabetOfTheMachineChangeNothing() throws Exception {
        Child.Outcome child = Child.java(
                        "-Duser.language=de",
                        "-Duser.country=DE",
                        "-Duser.timezone=Asia/Tokyo",
                        "-Dfile.encoding=ISO-8859-1")
                .run(Main.class, "issue", JOB.toString(), "--out", folder.toString());
        assertEquals(1, child.exitCode(), child.out());
        assertSame(issued(JOB), read(folder.resolve("0392-A")));
        Child.Outcome check = Child.java().run(Main.class, "check", "sample-jobs/first.yaml");
        assertEquals(Files.readString(Path.of("src/test/resources/expected/first.txt")), check.out());
    }

    /** A child that proves a dossier issued here, and leaves nothing behind where programs put what they need for a moment. */
    private void proves(Child child) throws Exception {
        Path pdf = Files.write(folder.resolve("dossier.pdf"), issued(JOB).get(Issued.PDF));
        Child.Outcome proof = child.run(Main.class, "prove", pdf.toString());
        assertTrue(proof.out().startsWith("The record holds.\n"), proof.out());
        assertEquals(0, proof.exitCode(), proof.out());
        try (Stream<Path> left = Files.list(moment())) {
            assertEquals(
                    List.of(),
                    left.filter(path -> path.toString().contains("prove")).toList());
        }
    }

    private Path moment() throws IOException {
        return Files.createDirectories(folder.resolve("moment"));
    }

    @Test
    void anotherJavaProvesIt() throws Exception {
        Optional<Path> other = otherJava();
        assumeTrue(other.isPresent(), "skipped: no other Java is installed");
        proves(Child.java(other.orElseThrow(), "-Djava.io.tmpdir=" + moment()));
    }

    /** An installed Java of another version than this one, new enough: where the environment says, or beside this one. */
    private static Optional<Path> otherJava() throws IOException {
        Path here = Path.of(System.getProperty("java.home")).toRealPath();
        Stream<Path> named = System.getenv().entrySet().stream()
                .filter(variable -> variable.getKey().startsWith("JAVA_HOME"))
                .map(variable -> Path.of(variable.getValue()));
        try (Stream<Path> beside = Files.list(here.resolveSibling(""))) {
            return Stream.concat(named, beside.sorted())
                    .filter(home -> feature(home) >= 17
                            && feature(home) != Runtime.version().feature())
                    .findFirst();
        }
    }

    /** From the file {@code release} that every Java has at its root; 0 if there is none. */
    private static int feature(Path home) {
        try {
            return Files.readAllLines(home.resolve("release")).stream()
                    .filter(line -> line.startsWith("JAVA_VERSION="))
                    .map(line -> line.replaceAll("\\D+(\\d+).*", "$1"))
                    .mapToInt(Integer::parseInt)
                    .findFirst()
                    .orElse(0);
        } catch (IOException | NumberFormatException noJava) {
            return 0;
        }
    }

    @Test
    void aMachineWithoutFontsProvesIt() throws Exception {
        String hide = "for d in /usr/share/fonts /usr/local/share/fonts /etc/fonts; do"
                + " [ ! -d $d ] || mount -t tmpfs tmpfs $d || exit 99; done; ";
        assumeTrue(
                Child.succeeds("unshare", "-m", "sh", "-c", hide),
                "skipped: nothing can be hidden from a program here");
        proves(Child.java("-Djava.io.tmpdir=" + moment())
                .within("unshare", "-m", "sh", "-c", hide + "exec \"$@\"", "sh"));
    }
}
