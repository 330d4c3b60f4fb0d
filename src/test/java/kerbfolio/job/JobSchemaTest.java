package kerbfolio.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The schema editors use says what the reader takes. */
class JobSchemaTest {
    private static final Path FILE = Path.of("shared", "job.schema.json");

    /** With {@code -Daccept} the file is written anew. */
    @Test
    void theSchemaIsThatOfTheRecords() throws Exception {
        String schema = JobSchema.text();
        if (System.getProperty("accept") != null) {
            Files.writeString(FILE, schema);
        }
        assertEquals(Files.readString(FILE), schema, "run the tests with -Daccept to write the schema anew");
    }
}
