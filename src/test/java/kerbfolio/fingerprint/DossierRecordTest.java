package kerbfolio.fingerprint;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import kerbfolio.JobText;
import kerbfolio.check.RequirementSets;
import kerbfolio.fingerprint.DossierRecord.Hashed;
import kerbfolio.fingerprint.DossierRecord.HashedSet;
import kerbfolio.job.JobFile;
import kerbfolio.job.PlainName;
import kerbfolio.reading.Complaints;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DossierRecordTest {
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private static final String OTHER = "0".repeat(64);

    @TempDir
    private Path folder = Path.of("");

    private Inputs inputs(JobText job) throws Complaints, IOException {
        return inputs(job.writeTo(folder), job, new Making("Kerbfolio 0", null));
    }

    private static Inputs inputs(Path file, JobText job, Making making) throws Complaints, IOException {
        JobFile read = JobFile.read(file);
        return Inputs.of(read, RequirementSets.of(read), job.release(), making);
    }

    private DossierRecord record(JobText job) throws Complaints, IOException {
        return inputs(job).record();
    }

    @Test
    void whatIsWrittenIsReadBack() throws Exception {
        var record = new DossierRecord(
                "Kerbfolio 0",
                new Hashed("job.yaml", ABC),
                List.of(new Hashed("photos/a b.jpg", ABC)),
                List.of(new Hashed("photos/a b.jpg", OTHER)),
                List.of(new HashedSet("shed", null, true, ABC), new HashedSet("house", "1", false, ABC)),
                ABC,
                ABC);
        assertEquals(record, DossierRecord.read(record.json()));
        assertTrue(new String(record.json(), UTF_8).contains("\"edition\": null"));
        assertThrows(Complaints.class, () -> DossierRecord.read("{\"program\": \"x\"}".getBytes(UTF_8)));
    }

    /** Anybody can take it with {@code sha256sum} of the file attached to the PDF. */
    @Test
    void theShortFingerprintIsTheBeginningOfTheRecordsHash() throws Exception {
        DossierRecord record = record(JobText.blank());
        String hash = Sha256.of(record.json());
        assertEquals(
                hash.substring(0, 4) + "-" + hash.substring(4, 8) + "-" + hash.substring(8, 12) + "-"
                        + hash.substring(12, 16),
                record.fingerprint());
    }

    @Test
    void everySetInForceIsNamedWithItsEditionAndWhoseItIs() throws Exception {
        Files.writeString(folder.resolve("shed.yaml"), "{ set: shed, title: Rules of the shed, edition: 2026-03 }");
        JobFile read = JobFile.read(
                JobText.blank().with("job.compared-with", "[shed, un-ece]").writeTo(folder));
        DossierRecord record = Inputs.of(
                        read, RequirementSets.of(read), JobText.blank().release(), new Making("Kerbfolio 0", null))
                .record();
        assertEquals(
                List.of("un-ece", "house", "shed"),
                record.sets().stream().map(HashedSet::set).toList());
        HashedSet shed = record.sets().get(2);
        assertEquals("2026-03", shed.edition());
        assertTrue(shed.own());
        assertEquals(Sha256.of(folder.resolve("shed.yaml")), shed.sha256());
        assertFalse(record.sets().get(0).own());
        assertEquals(
                Sha256.of(Path.of("shared/requirement-sets/un-ece.yaml")),
                record.sets().get(0).sha256());
    }

    @Test
    void everyFileTheJobNamesIsRecordedOnceByItsOriginal() throws Exception {
        for (String name : List.of("ticket.pdf", "closed.jpg")) {
            Files.writeString(folder.resolve(name), "abc");
        }
        Path photo = folder.resolve("a.jpg");
        // Wider than a page shows: the print of it is another file.
        assertTrue(ImageIO.write(new BufferedImage(1800, 900, BufferedImage.TYPE_INT_RGB), "jpg", photo.toFile()));
        String original = Sha256.of(photo);
        JobText job = JobText.blank()
                .add("documents", "{ file: ticket.pdf }")
                .add("photos", "{ file: a.jpg }")
                .add("photos", "{ file: a.jpg }")
                .add(
                        "punch-list",
                        "{ id: \"1\", text: lamp, holds: none, closed: { by: B. Reader, date: 2026-10-01, photo: closed.jpg } }");
        assertEquals(
                List.of(new Hashed("ticket.pdf", ABC), new Hashed("a.jpg", original), new Hashed("closed.jpg", ABC)),
                record(job).files());
        Inputs inputs = inputs(job);
        String print = Sha256.of(inputs.prints().get("a.jpg").jpeg());
        assertNotEquals(original, print);
        assertEquals(List.of(new Hashed("a.jpg", print)), inputs.record().prints());
        var known = new Making("Kerbfolio 0", null, Map.of("a.jpg", "0".repeat(64)));
        assertEquals(
                "0".repeat(64),
                inputs(job.writeTo(folder), job, known).record().files().get(1).sha256());
    }

    @Test
    void anythingThatGoesInMovesTheFingerprint() throws Exception {
        String plain = record(JobText.onTwoAxles()).fingerprint();
        assertEquals(plain, record(JobText.onTwoAxles()).fingerprint());
        assertNotEquals(
                plain, record(JobText.onTwoAxles().with("job.phone", "\"1\"")).fingerprint());
        JobText job = JobText.onTwoAxles();
        Path file = job.writeTo(folder);
        assertNotEquals(
                plain,
                inputs(file, job, new Making("Kerbfolio 1", null)).record().fingerprint());
        Path templates = Files.createDirectory(folder.resolve("templates"));
        assertNotEquals(
                plain,
                inputs(file, job, new Making("Kerbfolio 0", templates)).record().fingerprint());
        // The same file read by a program that finds something else.
        JobFile read = JobFile.read(file);
        assertNotEquals(
                plain,
                Inputs.of(read, RequirementSets.of(read), JobText.blank().release(), new Making("Kerbfolio 0", null))
                        .record()
                        .fingerprint());
    }

    @Test
    void noFileOfTheDossierIsAPlainNameForAnother() {
        for (String name :
                List.of(Issued.PDF, Issued.WORKBOOK, Issued.FINDINGS, Issued.FINGERPRINT, DossierRecord.FILE)) {
            assertTrue(PlainName.objection(name).isPresent(), name);
            assertTrue(PlainName.objection("photos/" + name).isEmpty(), name);
        }
    }
}
