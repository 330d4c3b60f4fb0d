package kerbfolio.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import kerbfolio.reading.RecordReaderTest.Crate;
import org.junit.jupiter.api.Test;

/** Where things stand in a file; every place is counted by hand or cut out of the text and compared with it. */
class PlacesTest {
    private static final String YAML = """
            id: \"1042\"  # quoted
            note: \uD83D\uDE00 plain   # after a character Java counts twice
            mass:
              12 kg
            papers:
              - id: drive-unit
                serial: 'it''s'
              - {note: no id}
            labels: {v2.1: {text: \uD83D\uDE00}}
            """;

    @Test
    void everyValueCanBeCutOutOfTheTextWithItsQuotes() throws Exception {
        Places places = places("f.yaml", YAML);
        assertEquals("\"1042\"", cut(places, "id"));
        assertEquals("\uD83D\uDE00 plain", cut(places, "note"));
        assertEquals("12 kg", cut(places, "mass"));
        assertEquals("drive-unit", cut(places, "papers[drive-unit].id"));
        assertEquals("'it''s'", cut(places, "papers[drive-unit].serial"));
        assertEquals("no id", cut(places, "papers[1].note"));
        assertEquals("\uD83D\uDE00", cut(places, "labels.v2.1.text"));
    }

    @Test
    void theSameHoldsForJsonAndForTheOtherLineEnds() throws Exception {
        Places json = places(
                "f.json", "\uFEFF{\"id\": \"a\\u0062\",\r\n \"papers\": [{\"id\": 7, \"note\": \"\uD83D\uDE00\"}]}");
        assertEquals("\"a\\u0062\"", cut(json, "id"));
        assertEquals("7", cut(json, "papers[7].id"));
        assertEquals("\"\uD83D\uDE00\"", cut(json, "papers[7].note"));
        Places crlf = places("f.yaml", "\uFEFF" + YAML.replace("\n", "\r\n"));
        assertEquals("12 kg", cut(crlf, "mass"));
        assertEquals("no id", cut(crlf, "papers[1].note"));
        assertEquals(4, crlf.at("mass").line());
    }

    @Test
    void allPathsAreListedInTheOrderOfTheFile() throws Exception {
        assertEquals(
                List.of(
                        "",
                        "id",
                        "note",
                        "mass",
                        "papers",
                        "papers[drive-unit]",
                        "papers[drive-unit].id",
                        "papers[drive-unit].serial",
                        "papers[1]",
                        "papers[1].note",
                        "labels",
                        "labels.v2.1",
                        "labels.v2.1.text"),
                places("f.yaml", YAML).paths());
    }

    @Test
    void whatIsNotWrittenIsPointedAtByWhatHoldsIt() throws Exception {
        Places places = places("f.yaml", YAML);
        assertPlace(4, 3, places.at("mass"));
        assertPlace(5, 1, places.at("papers"));
        assertPlace(6, 5, places.at("papers[drive-unit].mass"));
        assertPlace(5, 1, places.at("papers[pack].mass"));
        assertPlace(9, 10, places.at("labels.v2.1.width"));
        assertPlace(1, 1, places.at("weighings.tilt.steps[0].rise"));
        assertTrue(places.written("papers[drive-unit].mass").isEmpty());
        assertTrue(places.written("papers").isEmpty());
    }

    @Test
    void aPathAloneIsEnoughToRefuse() throws Exception {
        Places places = places("f.yaml", YAML);
        assertEquals(
                "f.yaml:8:12: papers > entry 2 > note: too short",
                places.refusal("papers[1].note", "too short").getMessage());
        assertEquals(
                "f.yaml:6:5: papers > drive-unit: no mass",
                places.refusal("papers[drive-unit].mass", "no mass").getMessage());
    }

    private static Places places(String name, String text) throws Complaints {
        return RecordReader.read(name, text.getBytes(StandardCharsets.UTF_8), Crate.class)
                .places();
    }

    private static String cut(Places places, String path) {
        Place place = places.written(path).orElseThrow();
        return places.text().substring(place.start(), place.end());
    }

    private static void assertPlace(int line, int column, Place place) {
        assertEquals(line + ":" + column, place.line() + ":" + place.column());
    }
}
