package kerbfolio.fingerprint;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.fingerprint.DossierRecord.Hashed;
import kerbfolio.fingerprint.DossierRecord.HashedSet;
import org.junit.jupiter.api.Test;

class UnpackedTest {
    private static boolean orderly(String job, String file, String set) {
        return Unpacked.isOrderly(new DossierRecord(
                "Kerbfolio 0",
                new Hashed(job, "0"),
                List.of(new Hashed(file, "0")),
                List.of(),
                List.of(new HashedSet(set, null, true, "0")),
                null,
                "0"));
    }

    @Test
    void whatLiesBesideAJobFileIsOrderly() {
        assertTrue(orderly("job.yaml", "photos/a b.jpg", "un-ece"));
        assertTrue(orderly("Größe 2.json", "..hidden.jpg", "shed.2"));
    }

    /** Names out of a PDF are anybody's. */
    @Test
    void noNameLeadsOutOfTheFolder() {
        for (String name : List.of(
                "../job.yaml",
                "/etc/job.yaml",
                "a/../../job.yaml",
                "C:job.yaml",
                "a\\job.yaml",
                "..",
                ".",
                "",
                "a\0b",
                "./a",
                "a//b",
                "a/",
                "a\tb")) {
            assertFalse(orderly(name, "a.jpg", "un-ece"), name);
            assertFalse(orderly("job.yaml", name, "un-ece"), name);
            assertFalse(orderly("job.yaml", "a.jpg", name), name);
        }
        assertFalse(orderly("job.yaml", "record.json", "un-ece"));
        assertFalse(orderly("sub/job.yaml", "a.jpg", "un-ece"));
    }
}
