package kerbfolio.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kerbfolio.reading.RecordReaderTest.Crate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files made to mislead or to exhaust: each is refused at its place, with one thing said and not fifty. */
class HostileFileTest {
    @TempDir
    private Path folder;

    @Test
    void anAliasAnAnchorAndAMergeAreRefused() {
        assertEquals(
                List.of(
                        "f.yaml:2:9: labels: `&l` names a place to refer to; leave the name out",
                        "f.yaml:3:9: papers: `*l` refers to another place of the file; write the value out",
                        "f.yaml:4:9: serial: `*l` refers to another place of the file; write the value out"),
                Refusal.of("id: a\nlabels: &l {a: {text: b}}\npapers: *l\nserial: *l\n", Crate.class));
        assertEquals(
                List.of("f.yaml:3:3: papers: `<<` merges another section in; write its keys out"),
                Refusal.of("id: a\npapers:\n  <<: {b: c}\n", Crate.class));
        assertEquals(
                List.of(
                        "f.yaml:2:1: `&k` names a place to refer to; leave the name out",
                        "f.yaml:2:12: serial: `!!int` gives a type; leave it out, or put a text that begins with `!` into"
                                + " quotes",
                        "f.yaml:3:7: note: `&n` names a place to refer to; leave the name out",
                        "f.yaml:4:1: `!t` gives a type; leave it out, or put a text that begins with `!` into quotes"),
                Refusal.of("id: a\n&k serial: !!int 5\nnote: &n b\n!t marks: [c]\n", Crate.class));
    }

    @Test
    void anAliasBombStaysSmall() {
        String bomb = "id: a\npapers:\n  x0: &x0 [b, b, b, b, b, b, b, b, b, b]\n"
                + IntStream.range(1, 40)
                        .mapToObj(i -> "  x" + i + ": &x" + i + " [" + ("*x" + (i - 1) + ", ").repeat(10) + "]\n")
                        .collect(Collectors.joining());
        List<String> complaints = Refusal.of(bomb, Crate.class);
        // 40 anchors and 390 aliases; 200 are said.
        assertEquals(201, complaints.size());
        assertEquals("f.yaml:3:7: papers > x0: `&x0` names a place to refer to; leave the name out", complaints.get(0));
        assertTrue(complaints.get(200).endsWith("more complaints than these; correct these and read the file again"));
    }

    @Test
    void aThousandFaultsAreNotAllSaid() {
        List<String> complaints = Refusal.of(
                "id: a\n"
                        + IntStream.range(0, 5_000)
                                .mapToObj(i -> "odd" + i + ": 1\n")
                                .collect(Collectors.joining()),
                Crate.class);
        assertEquals(201, complaints.size());
        assertTrue(complaints.get(199).startsWith("f.yaml:201:1: odd199: unknown key `odd199`"));
        assertTrue(complaints.get(200).endsWith("more complaints than these; correct these and read the file again"));
    }

    @Test
    void aKeyIsWrittenOnce() {
        assertEquals(
                List.of("f.yaml:3:1: serial: `serial` stands here twice; keep one of the two"),
                Refusal.of("id: a\nserial: 1\nserial: 2\n", Crate.class));
        assertEquals(
                List.of("f.json:1:24: serial: `serial` stands here twice; keep one of the two"),
                Refusal.ofJson("{\"id\":\"a\",\"serial\":\"1\",\"serial\":\"2\"}", Crate.class));
    }

    @Test
    void aFileHoldsOneDocument() {
        String second = "a second document begins here; one file holds one document, nothing after it";
        assertEquals(List.of("f.yaml:3:1: " + second), Refusal.of("id: a\n---\nid: b\n", Crate.class));
        assertEquals(List.of("f.json:1:12: " + second), Refusal.ofJson("{\"id\":\"a\"} {\"id\":\"b\"}", Crate.class));
    }

    @Test
    void tenThousandLevelsAreRefusedAtTheThirtyThird() {
        String deep = "nested deeper than 32 levels; nothing here needs more than ten";
        // `papers: ` is eight characters; its first bracket is level 1, so the 33rd stands in column 8 + 33.
        assertEquals(List.of("f.yaml:2:41: " + deep), Refusal.of("id: a\npapers: " + "[".repeat(10_000), Crate.class));
        // Without a key, the first bracket is level 0.
        assertEquals(List.of("f.json:1:34: " + deep), Refusal.ofJson("[".repeat(10_000), Crate.class));
        String keys = "{\"a\":";
        assertEquals(
                List.of("f.json:1:" + (33 * keys.length() + 1) + ": " + deep),
                Refusal.ofJson(keys.repeat(10_000), Crate.class));
        String indented = IntStream.range(0, 10_000)
                .mapToObj(i -> " ".repeat(Math.min(i, 200)) + "a:\n")
                .collect(Collectors.joining());
        assertEquals(1, Refusal.of(indented, Crate.class).size());
    }

    @Test
    void aHundredMegabytesAreNotEvenRead() throws IOException {
        Path file = folder.resolve("large.yaml");
        try (var sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(100_000_000);
        }
        String large = "the file is larger than 3 MB; keep pictures and papers in files beside it";
        Complaints complaints = assertThrows(Complaints.class, () -> RecordReader.bytes(file));
        assertEquals("large.yaml:1:1: " + large, complaints.getMessage());
        assertEquals(List.of("f.yaml:1:1: " + large), Refusal.of("f.yaml", new byte[3_000_001], Crate.class));
    }

    @Test
    void tooManyEntriesAndTooLongTextsAreRefused() {
        assertEquals(
                List.of("f.yaml:2:40004: the file holds more than 20000 entries; leave out what is no part of it"),
                // The file, id and papers are three; the 19 998th `a` is one too many, in column 10 + 2 · 19 997.
                // pair.
                Refusal.of("id: a\npapers: [" + "a,".repeat(30_000) + "]", Crate.class));
        assertEquals(
                List.of("f.yaml:2:7: a text of more than 20000 characters; put it into a document of its own"),
                Refusal.of("id: a\nnote: " + "x".repeat(20_001), Crate.class));
        assertEquals(
                List.of("f.json:1:2: a key of more than 100 characters; no key is that long"),
                Refusal.ofJson("{\"" + "x".repeat(101) + "\": 1}", Crate.class));
    }

    @Test
    void whatCannotBePrintedIsRefused() {
        String leaveOut = ", which cannot be printed; leave it out";
        assertEquals(
                List.of(
                        "f.yaml:2:9: serial: the text holds character U+001B" + leaveOut,
                        "f.yaml:3:9: colour: the text holds character U+0000" + leaveOut),
                Refusal.of("id: a\nserial: \"\\e[31m\"\ncolour: \"re\\0d\"\n", Crate.class));
        assertEquals(
                List.of("f.json:1:8: id: the text holds character U+D800" + leaveOut),
                Refusal.ofJson("{\"id\": \"\\ud800\"}", Crate.class));
        assertEquals(
                List.of("f.yaml:1:7: character U+0000 cannot stand in a text file; is this a job file, written as YAML"
                        + " or JSON?"),
                Refusal.of("f.yaml", "id: ab\0".getBytes(StandardCharsets.UTF_8), Crate.class));
        byte[] latin = "id: caf\u00E9\n".getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(
                List.of("f.yaml:1:8: this is not UTF-8 text from here on; save the file as UTF-8 and read it again"),
                Refusal.of("f.yaml", latin, Crate.class));
    }

    @Test
    void aComplaintIsOneLineOfReadableLength() {
        List<String> complaints = Refusal.of(
                "id: a\ncolour: \"" + "x\\n".repeat(5_000) + "\"\n\"" + "y\\n".repeat(50) + "\": 1\n", Crate.class);
        assertEquals(2, complaints.size());
        for (String complaint : complaints) {
            assertTrue(complaint.length() < 1_300, complaint);
            assertTrue(complaint.lines().count() == 1, complaint);
        }
    }
}
