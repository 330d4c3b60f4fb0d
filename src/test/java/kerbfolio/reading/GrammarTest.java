package kerbfolio.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import kerbfolio.reading.RecordReaderTest.Crate;
import org.junit.jupiter.api.Test;

/** Files that are no YAML or no JSON, and the odd ways a file can still be one. */
class GrammarTest {
    @Test
    void whatIsNoYamlIsToldWhatToWrite() {
        assertYaml("2:1", "a tab stands here; indent with spaces", "labels:\n\ta: {text: b}\n");
        assertYaml(
                "1:8",
                "one `: ` too many; put a text that holds a colon into quotes, and see that the key above has its own `:`",
                "note: a: b\n");
        assertYaml("1:7", "a quote or bracket is opened here and never closed; close it", "note: \"a\nserial: 1\n");
        assertYaml("1:8", "a quote or bracket is opened here and never closed; close it", "marks: [a, b\n");
        assertYaml("1:7", "a text that begins with this sign goes into quotes", "note: @a\n");
        assertYaml("1:9", "a text that begins with > or | goes into quotes, as in \"> 500 MΩ\"", "note: > 500 MΩ\n");
        assertYaml(
                "2:2",
                "the indentation or the quotes do not fit; begin this line under the key it belongs with",
                "note: 'a'\n serial: b\n");
    }

    @Test
    void whatIsNoJsonIsToldWhatToWrite() {
        assertJson(
                "1:2", "a key in double quotes belongs here; take out a comma before a closing bracket", "{'id': 1}");
        assertJson(
                "1:12",
                "a key in double quotes belongs here; take out a comma before a closing bracket",
                "{\"id\": \"a\",}");
        assertJson("1:9", "put a number with leading noughts into double quotes", "{\"id\": 0012345}");
        assertJson("1:8", "put a text into double quotes", "{\"id\": abc}");
        assertJson("1:11", "JSON has no such number; write a figure with its unit in double quotes", "{\"id\": NaN}");
        assertJson("1:9", "the file ends before its last bracket or quote is closed; close it", "{\"id\": 1");
        assertJson("1:10", "see that commas, brackets and double quotes are right around this place", "{\"id\": 1 2}");
    }

    @Test
    void whatIsNeitherIsRefused() {
        assertEquals(
                List.of("f.yaml:1:1: takes keys, each on its own line below it: text, width"),
                Refusal.of("hello world", RecordReaderTest.Label.class));
        assertEquals(
                List.of("f.yaml:1:1: the file is empty; write its keys, or begin with `kerbfolio new`"),
                Refusal.of("", Crate.class));
        assertEquals(
                List.of("f.yaml:1:1: the file is empty; write its keys, or begin with `kerbfolio new`"),
                Refusal.of("# nothing but this\n", Crate.class));
        assertEquals(
                List.of("f.json:1:1: the file is empty; write its keys, or begin with `kerbfolio new`"),
                Refusal.ofJson(" ", Crate.class));
    }

    @Test
    void whatWasFoundBeforeTheFaultIsStillSaid() {
        assertEquals(
                List.of("f.yaml:1:5", "f.yaml:3:7"),
                places(Refusal.of("id: &a b\nserial: 1\nnote: @a\n", Crate.class)));
    }

    @Test
    void aByteOrderMarkAndTheOtherLineEndsMoveNoColumn() {
        String lines = "id: a\r\nnote: \uD83D\uDE00 x\r\nmarks: [\uD83D\uDE00, {}]\r\nserail: 1\r\n";
        List<String> complaints = Refusal.of("\uFEFF" + lines, Crate.class);
        assertEquals(List.of("f.yaml:3:12", "f.yaml:4:1"), places(complaints));
        assertEquals(
                List.of("f.json:2:2"),
                places(Refusal.ofJson("\uFEFF{\"id\": \"a\",\r\n \"serail\": \"1\"}", Crate.class)));
    }

    @Test
    void aDocumentMayBeginWithItsMark() throws Exception {
        assertEquals(
                "a", Refusal.read("%YAML 1.2\n---\nid: a\n...\n", Crate.class).id());
    }

    private static List<String> places(List<String> complaints) {
        return complaints.stream()
                .map(line -> line.substring(0, line.indexOf(": ")))
                .toList();
    }

    private static void assertYaml(String place, String hint, String yaml) {
        assertEquals(
                List.of("f.yaml:" + place + ": this does not read as YAML: " + hint), Refusal.of(yaml, Crate.class));
    }

    private static void assertJson(String place, String hint, String json) {
        List<String> complaints = Refusal.of("f.JSON", json.getBytes(StandardCharsets.UTF_8), Crate.class);
        assertEquals(List.of("f.JSON:" + place + ": this does not read as JSON: " + hint), complaints);
        assertTrue(place.startsWith("1:"));
    }
}
