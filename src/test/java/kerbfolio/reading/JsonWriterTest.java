package kerbfolio.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.RecordReaderTest.Colour;
import org.junit.jupiter.api.Test;

/** JSON as programs read it, character by character. */
class JsonWriterTest {
    record Entry(String partNumber, Double value, Optional<String> note, List<Object> inner) {}

    @Test
    void aRecordIsWrittenKeyByKey() {
        var inner = new ArrayList<Object>(Arrays.asList(Colour.DARK_BLUE, LocalDate.of(2026, 3, 31), null, true, 7L));
        inner.add(Quantity.of("5 kg ± 1 kg"));
        inner.add(new LinkedHashMap<>(Map.of("b", List.of(), "a key", Map.of()))
                .keySet()
                .size());
        assertEquals("""
                {
                  "part-number": "a \\"quoted\\" µ 😀",
                  "value": 0.3,
                  "note": null,
                  "inner": [
                    "dark blue",
                    "2026-03-31",
                    null,
                    true,
                    7,
                    "5 kg ± 1 kg",
                    2
                  ]
                }
                """, write(new Entry("a \"quoted\" µ 😀", 0.1 + 0.2, Optional.empty(), inner)));
    }

    @Test
    void nothingInsideIsWrittenShort() {
        assertEquals("[\n  [],\n  {}\n]\n", write(List.of(List.of(), Map.of())));
        assertEquals("null\n", write(null));
    }

    @Test
    void aNumberHasNoMoreDigitsThanItMeans() {
        assertEquals("268\n", write(268.0));
        assertEquals("-0.000012\n", write(-1.2e-5));
        assertEquals("0\n", write(-0.0));
        assertEquals("0.333333333333\n", write(1.0 / 3));
        assertEquals("1.2E-18\n", write(1.2e-18));
        assertEquals("1E+20\n", write(1e20));
        assertEquals("123456789012345\n", write(123456789012345L));
        assertThrows(IllegalArgumentException.class, () -> write(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> write(Map.of("a", Double.POSITIVE_INFINITY)));
    }

    @Test
    void whatIsWrittenReadsBack() throws Exception {
        var label = new RecordReaderTest.Label("a: b\n\"c\"", Quantity.of("2 in"));
        byte[] bytes = JsonWriter.write(label);
        assertEquals(
                label,
                RecordReader.read("f.json", bytes, RecordReaderTest.Label.class).value());
    }

    private static String write(Object value) {
        return new String(JsonWriter.write(value), StandardCharsets.UTF_8);
    }
}
