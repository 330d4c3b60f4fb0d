package kerbfolio.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import javax.imageio.ImageIO;
import kerbfolio.Child;
import kerbfolio.JobText;
import kerbfolio.Main;
import kerbfolio.check.SetFile;
import kerbfolio.dossier.Dossier;
import kerbfolio.fingerprint.DossierRecord;
import kerbfolio.fingerprint.DossierRecord.Hashed;
import kerbfolio.fingerprint.DossierRecord.HashedSet;
import kerbfolio.fingerprint.Inputs;
import kerbfolio.fingerprint.Issued;
import kerbfolio.fingerprint.Making;
import kerbfolio.job.JobFile;
import kerbfolio.pdf.Attachment;
import kerbfolio.pdf.Attachment.Relation;
import kerbfolio.pdf.DossierPdf;
import kerbfolio.pdf.PdfFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Each answer of the command, on a PDF for which it is the right one. */
class ProveTest {
    private static final Making NOW = new Making(Kerbfolio.program(), null);
    private static final String OTHER_HASH = "0".repeat(64);

    @TempDir
    private Path folder = Path.of("");

    private Path write(byte[] content) throws IOException {
        return Files.write(folder.resolve("dossier.pdf"), content);
    }

    private static byte[] pdf(Issued issued) {
        return issued.files().get(Issued.PDF);
    }

    private Rerun rerun(JobText job, Making making) throws Exception {
        return Rerun.of(job.writeTo(folder), making);
    }

    /** The PDF of a job, issued from inputs somebody has meddled with. */
    private Path meddled(JobText job, UnaryOperator<Inputs> change) throws Exception {
        Rerun rerun = rerun(job, NOW);
        Inputs inputs = change.apply(rerun.inputs());
        return write(pdf(Issued.of(dossier(rerun, inputs), inputs)));
    }

    private static Dossier dossier(Rerun rerun, Inputs inputs) {
        return rerun.dossier(inputs.record().fingerprint());
    }

    private static Inputs with(Inputs inputs, DossierRecord record) {
        return new Inputs(inputs.job(), inputs.sets(), inputs.findings(), inputs.prints(), inputs.making(), record);
    }

    private static DossierRecord sets(DossierRecord record, List<HashedSet> sets) {
        return new DossierRecord(
                record.program(),
                record.job(),
                record.files(),
                record.prints(),
                sets,
                record.templates(),
                record.findings());
    }

    private static Typed prove(Path pdf, String... options) {
        var arguments = new ArrayList<String>(List.of("prove", pdf.toString()));
        arguments.addAll(List.of(options));
        Typed typed = Typed.of(arguments.toArray(String[]::new));
        assertTrue(typed.out().lines().allMatch(line -> line.length() <= 100), typed.out());
        assertFalse(typed.out().contains("kerbfolio-prove-"), typed.out());
        return typed;
    }

    /** The answer in one line, whatever it was broken into. */
    private static String words(Typed typed) {
        return typed.out().replaceAll("\\s+", " ").strip();
    }

    private static void answers(Typed typed, int exitCode, String... words) {
        assertEquals("", typed.err());
        for (String each : words) {
            assertTrue(words(typed).contains(each), each + "\n" + typed.out());
        }
        assertEquals(exitCode, typed.exitCode(), typed.out());
    }

    @Test
    void aDossierAsIssuedHolds() throws Exception {
        for (JobText job : List.of(JobText.onFourCorners(), JobText.blank())) {
            Issued issued = rerun(job, NOW).issued();
            answers(
                    prove(write(pdf(issued))),
                    0,
                    "The record holds.",
                    "job.yaml, taken out of it and rerun by " + Kerbfolio.program()
                            + ", gives this PDF again, byte for byte",
                    issued.record().fingerprint());
        }
    }

    /** What lies beside the job file: the shop's own set travels inside, pictures and papers are known by their hash. */
    @Test
    void aDossierHoldsWithoutTheFilesItNamesAndWithThem() throws Exception {
        Path shop = Files.createDirectory(folder.resolve("shop"));
        Files.writeString(shop.resolve("shed.yaml"), "{ set: shed, title: Rules of the shed }");
        Path photo = Files.createDirectory(shop.resolve("photos")).resolve("a.jpg");
        // Larger than a page shows: what travels inside is the print of it, and the record names the file itself.
        assertTrue(ImageIO.write(new BufferedImage(1800, 1200, BufferedImage.TYPE_INT_RGB), "jpg", photo.toFile()));
        Path file = JobText.onTwoAxles()
                .with("job.compared-with", "[shed]")
                .add("photos", "{ file: photos/a.jpg }")
                .writeTo(shop);
        Path pdf = write(pdf(Rerun.of(file, NOW).issued()));
        answers(
                prove(pdf, "--job", file.toString()),
                0,
                "the job file given, and what lies beside it, are those of the record");
        Files.writeString(photo, "another picture");
        answers(
                prove(pdf, "--job", file.toString()),
                1,
                "from another job file, or other files beside it.",
                "a.jpg is not the photos/a.jpg the record names: recorded SHA-256");
        Files.delete(shop.resolve("shed.yaml"));
        answers(prove(pdf, "--job", file.toString()), 1, "there is no file " + shop.resolve("shed.yaml"));
        Files.writeString(file, "other: 1");
        answers(prove(pdf, "--job", file.toString()), 1, "job.yaml is not the job.yaml the record names");
        answers(
                prove(pdf),
                0,
                "originals of papers and pictures, recorded by their hash and not compared: photos/a.jpg; --job FILE compares them");
    }

    /** A job with one photograph larger than a page shows, all of one colour. */
    private JobText photographed(int colour) throws IOException {
        var picture = new BufferedImage(1800, 1200, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < picture.getWidth(); x++) {
            for (int y = 0; y < picture.getHeight(); y++) {
                picture.setRGB(x, y, colour);
            }
        }
        assertTrue(ImageIO.write(picture, "jpg", folder.resolve("a.jpg").toFile()));
        return JobText.blank().add("photos", "{ file: a.jpg }");
    }

    private static Inputs swapped(Inputs inputs, Inputs other, DossierRecord record) {
        return new Inputs(inputs.job(), inputs.sets(), inputs.findings(), other.prints(), inputs.making(), record);
    }

    /** The pages show the print, so another print is another dossier, whatever its original was. */
    @Test
    void aPhotographSwappedForAnotherIsFound() throws Exception {
        Inputs other = rerun(photographed(0xff0000), NOW).inputs();
        Path pdf = meddled(photographed(0x00ff00), inputs -> swapped(inputs, other, inputs.record()));
        answers(
                prove(pdf),
                1,
                "was changed after it was issued.",
                "the photograph inside, a.jpg, is not the one the record names: recorded SHA-256");
        // The print alone exchanged in the record as well: another fingerprint, and no print of the file given.
        Rerun rerun = rerun(photographed(0x00ff00), NOW);
        DossierRecord was = rerun.inputs().record();
        var record = new DossierRecord(
                was.program(), was.job(), was.files(), other.record().prints(), was.sets(), null, was.findings());
        assertNotEquals(was.fingerprint(), record.fingerprint());
        Inputs forged = swapped(rerun.inputs(), other, record);
        Path consistent = write(pdf(Issued.of(dossier(rerun, forged), forged)));
        answers(prove(consistent), 0, "with the one at the foot of the page", record.fingerprint());
        answers(
                prove(consistent, "--job", folder.resolve("job.yaml").toString()),
                1,
                "was changed after it was issued.",
                "the photograph inside, a.jpg, is not the print of the file given: recorded SHA-256");
    }

    /** Without UTF-8 names a file called so cannot be unpacked; that is the machine's fault and not the dossier's. */
    @Test
    @EnabledOnOs(OS.LINUX) // where a child's locale rules what a file may be called
    void aNameThisMachineCannotHoldIsSaidToBeIt() throws Exception {
        Path pdf = naming("Türe.jpg");
        Child.Outcome outcome = Child.java().run(Main.class, "prove", pdf.toString());
        assertEquals(3, outcome.exitCode(), outcome.out());
        assertTrue(
                outcome.out().contains("dossier.pdf: cannot be unpacked: this machine cannot hold the name `T"),
                outcome.out());
    }

    /** A PDF whose record names one more file. */
    private Path naming(String name) throws Exception {
        return meddled(JobText.blank(), inputs -> {
            DossierRecord was = inputs.record();
            List<Hashed> files = List.of(new Hashed(name, OTHER_HASH));
            return with(
                    inputs,
                    new DossierRecord(was.program(), was.job(), files, List.of(), was.sets(), null, was.findings()));
        });
    }

    /** Names out of a PDF are anybody's, and where the job was unpacked is nobody's business. */
    @Test
    void aNameThatCannotBeUnpackedIsSaidWithoutThePlace() throws Exception {
        for (String name : List.of("job.yaml/x", "x".repeat(300))) {
            Path pdf = naming(name);
            Typed typed = prove(pdf);
            assertEquals(3, typed.exitCode(), typed.out());
            assertTrue(typed.sentence().contains("cannot hold the name `" + name.substring(0, 10)), typed.err());
            assertFalse(typed.err().contains("kerbfolio-prove-"), typed.err());
        }
        Path pdf = write(pdf(rerun(JobText.blank(), NOW).issued()));
        Path none = folder.resolve("none");
        Child.Outcome outcome = Child.java("-Djava.io.tmpdir=" + none).run(Main.class, "prove", pdf.toString());
        assertEquals(3, outcome.exitCode(), outcome.out());
        assertTrue(outcome.out().contains(none + ": is the folder for temporary files"), outcome.out());
        assertFalse(outcome.out().contains("kerbfolio-prove-"), outcome.out());
    }

    @Test
    void aJobFileThatIsNotThereIsNoOtherJob() throws Exception {
        Path pdf = write(pdf(rerun(JobText.blank(), NOW).issued()));
        Typed typo = prove(pdf, "--job", folder.resolve("TYPO").toString());
        assertEquals(3, typo.exitCode());
        assertEquals("There is no file " + folder.resolve("TYPO"), typo.sentence());
        assertEquals(3, prove(pdf, "--job", folder.toString()).exitCode());
    }

    @Test
    void aByteChangedAfterIssueIsFoundWithItsPart() throws Exception {
        byte[] whole = pdf(rerun(JobText.onTwoAxles(), NOW).issued());
        byte[] longer = Arrays.copyOf(whole, whole.length + 7);
        answers(
                prove(write(longer)),
                1,
                "was changed after it was issued.",
                "stands unchanged at the beginning, and 7 bytes were added behind it");
        byte[] comment = whole.clone();
        comment[whole.length - 3] ^= 1; // the end mark, which nothing reads
        answers(
                prove(write(comment)),
                1,
                "was changed after it was issued.",
                "no file inside, page or property differs");
    }

    /** Wherever a byte is changed, the record never holds, and the program says so in one plain answer. */
    @Test
    void noByteCanBeChangedUnseen() throws Exception {
        byte[] whole = pdf(rerun(JobText.blank(), NOW).issued());
        int steps = 12;
        for (int i = 0; i < steps; i++) {
            byte[] changed = whole.clone();
            changed[(int) ((long) (whole.length - 1) * i / (steps - 1))] ^= 4;
            Typed typed = prove(write(changed));
            if (typed.exitCode() == 3) {
                assertTrue(typed.sentence().contains("dossier.pdf: is "), typed.err());
            } else {
                assertTrue(List.of(1, 2).contains(typed.exitCode()), typed.out());
                assertTrue(typed.out().lines().count() >= 3, typed.out());
            }
        }
    }

    @Test
    void eachChangedPageIsNamed() throws Exception {
        // The same job, issued by a program that prints another word: same record, other pages.
        Rerun rerun = rerun(JobText.onTwoAxles(), NOW);
        Rerun other = rerun(JobText.onTwoAxles().with("job.customer", "Somebody Else"), NOW);
        Path pdf = write(pdf(Issued.of(dossier(other, rerun.inputs()), rerun.inputs())));
        answers(
                prove(pdf),
                1,
                "was changed after it was issued.",
                "the workbook inside is not the one that was issued",
                "the text of page 1 differs");
    }

    @Test
    void aJobFileChangedInsideIsAnotherJob() throws Exception {
        Path pdf = meddled(JobText.onTwoAxles(), inputs -> {
            JobFile job = inputs.job();
            byte[] lighter =
                    new String(job.bytes(), UTF_8).replace("814 kg", "714 kg").getBytes(UTF_8);
            return new Inputs(
                    new JobFile(job.job(), job.file(), lighter, job.places()),
                    inputs.sets(),
                    inputs.findings(),
                    inputs.prints(),
                    inputs.making(),
                    inputs.record());
        });
        answers(
                prove(pdf),
                1,
                "it was made from another job file",
                "the job file inside, job.yaml, is not the one the record names: recorded SHA-256");
    }

    @Test
    void aRequirementSetChangedInsideIsSaidToBe() throws Exception {
        Files.writeString(folder.resolve("shed.yaml"), "{ set: shed, title: Rules of the shed }");
        Path pdf = meddled(
                JobText.onTwoAxles().with("job.compared-with", "[shed]"),
                inputs -> new Inputs(
                        inputs.job(),
                        inputs.sets().stream()
                                .map(set -> set.own() ? new SetFile(set.set(), true, new byte[] {'x'}) : set)
                                .toList(),
                        inputs.findings(),
                        inputs.prints(),
                        inputs.making(),
                        inputs.record()));
        answers(
                prove(pdf),
                1,
                "it was made from another job file, or other files beside it.",
                "the shop's own requirement set inside, shed.yaml, is not the one the record names");
    }

    @Test
    void anotherVersionOfTheProgramIsComparedByItsFindings() throws Exception {
        Making old = new Making("Kerbfolio 0.0.1", null);
        answers(
                prove(write(pdf(rerun(JobText.onTwoAxles(), old).issued()))),
                1,
                "another version of the program issued it.",
                "issued by Kerbfolio 0.0.1; this is " + Kerbfolio.program(),
                "the findings come out the same",
                "its pages, its workbook and its pictures were not compared",
                "Prove it with Kerbfolio 0.0.1.");
        Rerun rerun = rerun(JobText.onTwoAxles(), old);
        Rerun heavier = rerun(JobText.onTwoAxles().with("weighings.as-delivered.axles.front", "854 kg"), old);
        Inputs inputs = rerun.inputs();
        DossierRecord record = inputs.record();
        var differing = new Inputs(
                inputs.job(),
                inputs.sets(),
                heavier.inputs().findings(),
                inputs.prints(),
                old,
                new DossierRecord(
                        record.program(),
                        record.job(),
                        record.files(),
                        record.prints(),
                        record.sets(),
                        null,
                        heavier.inputs().record().findings()));
        rerun(JobText.onTwoAxles(), old);
        // 850 kg permitted: 36 kg left under 814 kg, 4 kg too few over 854 kg.
        answers(
                prove(write(pdf(Issued.of(dossier(rerun, differing), differing)))),
                1,
                "another version of the program issued it.",
                "axle-margin/front-axle-as-delivered: issued not met, -4 ± ",
                "; now met, 36 ± ");
    }

    @Test
    void aRecordOfALaterProgramIsLeftToThatProgram() throws Exception {
        String later = "{ \"program\": \"Kerbfolio 9\", \"weather\": \"rain\" }";
        answers(
                prove(recording(later)),
                1,
                "issued by Kerbfolio 9; this is",
                "the record inside cannot be read: record.json:1:1:",
                "Prove it with Kerbfolio 9.");
        for (String own : List.of(later.replace("Kerbfolio 9", Kerbfolio.program()), "{ \"program\"", "")) {
            answers(prove(recording(own)), 1, "was changed after it was issued.", "the record inside cannot be read");
        }
        answers(prove(recording("{ \"songs\": [] }")), 2, "This is no dossier of this program.");
    }

    /** A PDF with another text for its record. */
    private Path recording(String json) throws Exception {
        var record = new Attachment(
                DossierRecord.FILE, "application/json", Relation.SUPPLEMENT, "record", json.getBytes(UTF_8));
        return write(DossierPdf.write(JobText.blank().dossier(), List.of(record), Map.of(), null)
                .content());
    }

    @Test
    void anotherEditionOrContentOfASetIsNamedWithBoth() throws Exception {
        Path edition = meddled(
                JobText.onTwoAxles(),
                inputs -> with(
                        inputs,
                        sets(
                                inputs.record(),
                                List.of(
                                        new HashedSet("un-ece", "0", false, OTHER_HASH),
                                        inputs.record().sets().get(1)))));
        answers(
                prove(edition),
                1,
                "The record does not hold with the requirement sets of this program.",
                "requirement set un-ece, edition 0, was in force; this program has un-ece, edition 2",
                "the findings come out the same");
        Path content = meddled(
                JobText.onTwoAxles(),
                inputs -> with(
                        inputs,
                        sets(
                                inputs.record(),
                                List.of(
                                        inputs.record().sets().get(0),
                                        new HashedSet("house", "2", false, OTHER_HASH)))));
        answers(prove(content), 1, "requirement set house, edition 2, has other content in this program: recorded");
    }

    @Test
    void templatesOfTheShopsOwnAreAskedForAndCompared() throws Exception {
        Path templates = Files.createDirectory(folder.resolve("templates"));
        Files.writeString(
                templates.resolve("dossier.ftlx"),
                "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>x</title></head><body>${head.car}</body></html>");
        Path pdf = write(pdf(rerun(JobText.blank(), new Making(Kerbfolio.program(), templates))
                .issued()));
        answers(prove(pdf), 1, "it was issued with other templates.", "Give their folder: --templates DIR.");
        answers(
                prove(pdf, "--templates", templates.toString()),
                0,
                "The record holds.",
                "the words on its pages are the shop's own");
        Files.writeString(templates.resolve("more.css"), "");
        answers(
                prove(pdf, "--templates", templates.toString()),
                1,
                "the templates given are not those it was issued with");
        Path plain = write(pdf(rerun(JobText.blank(), NOW).issued()));
        answers(prove(plain, "--templates", templates.toString()), 1, "Leave out --templates.");
        Typed none = prove(plain, "--templates", folder.resolve("none").toString());
        assertEquals(3, none.exitCode());
        assertTrue(none.sentence().endsWith("none: there is no such folder"), none.err());
    }

    @Test
    void aJobThisProgramRefusesIsSaidToBeRefused() throws Exception {
        Path pdf = meddled(JobText.blank(), inputs -> {
            byte[] wrong = "kerbfolio: 2".getBytes(UTF_8);
            JobFile job = inputs.job();
            DossierRecord record = inputs.record();
            return new Inputs(
                    new JobFile(job.job(), job.file(), wrong, job.places()),
                    inputs.sets(),
                    inputs.findings(),
                    inputs.prints(),
                    inputs.making(),
                    new DossierRecord(
                            record.program(),
                            new Hashed("job.yaml", sha256(wrong)),
                            List.of(),
                            List.of(),
                            record.sets(),
                            null,
                            record.findings()));
        });
        answers(
                prove(pdf),
                1,
                "this program refuses what it was made from.",
                "this program refuses the job file inside: job.yaml:1:1:");
    }

    private static String sha256(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError(e);
        }
    }

    /** Names out of a PDF are anybody's: one that leads out of the folder is not followed. */
    @Test
    void aRecordThatNamesAFileElsewhereIsNotOurs() throws Exception {
        Path pdf = naming("../outside.jpg");
        answers(prove(pdf), 2, "This is no dossier of this program.", "this program writes no such record");
    }

    @Test
    void whatIsNotOfThisProgramIsTwoAndWhatCannotBeReadIsThree() throws Exception {
        answers(
                prove(Files.writeString(folder.resolve("a.pdf"), "no PDF")),
                2,
                "This is no dossier of this program.",
                "the file is no PDF");
        String blank = """
                %PDF-1.7
                1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj
                2 0 obj<</Type/Pages/Count 1/Kids[3 0 R]>>endobj
                3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 9 9]>>endobj
                trailer<</Root 1 0 R>>
                %%EOF
                """;
        answers(
                prove(Files.writeString(folder.resolve("blank.pdf"), blank)),
                2,
                "the PDF holds no file record.json, which every dossier does");
        byte[] whole = pdf(rerun(JobText.blank(), NOW).issued());
        Typed half = prove(write(Arrays.copyOf(whole, whole.length / 2)));
        assertEquals(3, half.exitCode());
        assertTrue(half.sentence().endsWith("dossier.pdf: is damaged or cut off"), half.err());
        assertEquals(3, prove(folder.resolve("none.pdf")).exitCode());
        Typed directory = prove(folder);
        assertEquals(3, directory.exitCode());
        assertTrue(directory.sentence().endsWith("is a folder; give the dossier.pdf in it"), directory.err());
        assertEquals(2, Typed.of("prove").exitCode());
    }

    /** What travels inside is what lies beside the PDF. */
    @Test
    void thePdfHoldsTheWorkbookTheFindingsAndTheRecord() throws Exception {
        Issued issued = rerun(JobText.onTwoAxles(), NOW).issued();
        Map<String, byte[]> files = issued.files();
        try (PdfFile pdf = PdfFile.open(pdf(issued))) {
            assertArrayEquals(files.get(Issued.WORKBOOK), pdf.attachment(Issued.WORKBOOK));
            assertArrayEquals(files.get(Issued.FINDINGS), pdf.attachment(Issued.FINDINGS));
            assertArrayEquals(issued.record().json(), pdf.attachment(DossierRecord.FILE));
            assertArrayEquals(Files.readAllBytes(folder.resolve("job.yaml")), pdf.attachment("job.yaml"));
        }
        String fingerprint = new String(files.get(Issued.FINGERPRINT), UTF_8);
        for (String name : List.of(Issued.PDF, Issued.WORKBOOK, Issued.FINDINGS)) {
            assertTrue(fingerprint.contains(sha256(files.get(name))), name);
        }
        assertTrue(fingerprint.contains("\"fingerprint\": \"" + issued.record().fingerprint() + "\""), fingerprint);
    }
}
