package kerbfolio.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import kerbfolio.JobText;
import kerbfolio.dossier.FindingsFile.FindingEntry;
import kerbfolio.reading.JsonWriter;
import org.junit.jupiter.api.Test;

class FindingsFileTest {
    private static FindingEntry entry(JobText job, String id) {
        return FindingsFile.of(job.release()).findings().stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static double written(Double number) {
        return Objects.requireNonNull(number);
    }

    /** By hand: 1700 − 1600 kg; two readings of ± 1 kg make U = 2·√(2/3) kg. */
    @Test
    void aFindingCarriesItsFigureItsDoubtAndItsLimit() {
        FindingEntry entry = entry(JobText.onTwoAxles(), "gross-margin/as-delivered");
        assertEquals("gross-margin", entry.check());
        assertEquals("weight", entry.trade());
        assertEquals("as delivered", entry.subject());
        assertEquals("met", entry.verdict());
        assertEquals(100, written(entry.value()), 1e-9);
        assertEquals(1.633, written(entry.uncertainty()), 0.0005);
        assertEquals("kg", entry.unit());
        assertEquals("at least 0 kg", entry.limit());
        assertTrue(Objects.requireNonNull(entry.source()).contains("1230/2012"), entry.source());
        assertEquals("inspection", entry.gate());
    }

    @Test
    void whatIsMissingHasNoFigure() {
        FindingEntry entry = entry(JobText.onTwoAxles().without("weighings.as-delivered"), "gross-margin/as-delivered");
        assertEquals("no evidence", entry.verdict());
        assertNull(entry.value());
        assertNull(entry.uncertainty());
    }

    @Test
    void aWorkingHasNoLimitAndNoGate() {
        FindingEntry entry = entry(JobText.onTwoAxles(), "front-share/as-delivered");
        assertEquals("no limit", entry.verdict());
        assertEquals("%", entry.unit());
        assertEquals(50.875, written(entry.value()), 1e-9);
        assertNull(entry.limit());
        assertNull(entry.source());
        assertNull(entry.gate());
    }

    private static List<String> names(JsonNode node) {
        return StreamSupport.stream(((Iterable<String>) node::fieldNames).spliterator(), false)
                .collect(Collectors.toList());
    }

    /** The keys are what other programs read; they may be added to, never renamed. */
    @Test
    void programsFindTheKeysTheyKnow() throws Exception {
        byte[] json = JsonWriter.write(FindingsFile.of(JobText.onTwoAxles().release()));
        JsonNode root = new ObjectMapper().readTree(json);
        assertEquals(List.of("gates", "findings"), names(root));
        assertEquals(
                List.of("name", "state", "reasons"), names(root.get("gates").get(0)));
        assertTrue(names(root.get("findings").get(0))
                .containsAll(List.of(
                        "check",
                        "trade",
                        "subject",
                        "verdict",
                        "value",
                        "unit",
                        "uncertainty",
                        "limit",
                        "source",
                        "gate")));
        assertEquals("transport", root.get("gates").get(0).get("name").asText());
        assertEquals("not examined", root.get("gates").get(0).get("state").asText());
        assertTrue(root.get("gates").get(0).get("reasons").get(0).asText().contains("isolation resistance"));
    }
}
