package kerbfolio.reading;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads what must be refused, and gives the complaints as a user sees them. */
final class Refusal {
    private Refusal() {}

    static <T extends Record> List<String> of(String name, byte[] bytes, Class<T> type) {
        Complaints complaints = assertThrows(Complaints.class, () -> RecordReader.read(name, bytes, type));
        return complaints.list().stream().map(Complaint::toString).toList();
    }

    static <T extends Record> List<String> of(String yaml, Class<T> type) {
        return of("f.yaml", yaml.getBytes(StandardCharsets.UTF_8), type);
    }

    static <T extends Record> List<String> ofJson(String json, Class<T> type) {
        return of("f.json", json.getBytes(StandardCharsets.UTF_8), type);
    }

    static <T extends Record> T read(String yaml, Class<T> type) throws Complaints {
        return RecordReader.read("f.yaml", yaml.getBytes(StandardCharsets.UTF_8), type)
                .value();
    }
}
