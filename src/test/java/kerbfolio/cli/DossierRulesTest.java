package kerbfolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import kerbfolio.VeraPdf;
import kerbfolio.fingerprint.Issued;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

class DossierRulesTest {
    /** Written as the command issue writes it. */
    @TestFactory
    Stream<DynamicTest> theDossierOfEverySampleIsArchivalAndAccessible() throws IOException {
        try (Stream<Path> jobs = Files.list(Path.of("sample-jobs"))) {
            return jobs.filter(job -> job.toString().endsWith(".yaml")).sorted().toList().stream()
                    .map(job -> DynamicTest.dynamicTest(job.getFileName().toString(), () -> judge(job)));
        }
    }

    private static void judge(Path job) throws Exception {
        Issued dossier = Rerun.of(job).issued();
        assertEquals(List.of(), dossier.complaints());
        VeraPdf.assertArchivalAndAccessible(dossier.files().get(Issued.PDF));
    }
}
