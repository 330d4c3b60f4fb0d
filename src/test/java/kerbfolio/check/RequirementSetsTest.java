package kerbfolio.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kerbfolio.JobText;
import kerbfolio.job.JobFile;
import kerbfolio.reading.Complaint;
import kerbfolio.reading.Complaints;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RequirementSetsTest {
    @TempDir
    private Path folder = Path.of("");

    private Limits limits(JobText job) throws Complaints, IOException {
        return RequirementSets.limits(JobFile.read(job.writeTo(folder)));
    }

    private Complaint complaint(JobText job) {
        return assertThrows(Complaints.class, () -> limits(job)).list().get(0);
    }

    @Test
    void aJobThatNamesNoSetIsJudgedByTheDefault() throws Exception {
        assertEquals(
                "un-ece", limits(JobText.blank().without("job.home-set")).home().set());
    }

    @Test
    void setsNamedForComparisonAreFound() throws Exception {
        var limits = limits(JobText.blank().with("job.compared-with", "[us-federal]"));
        assertEquals("us-federal", limits.compared().get(0).set());
        assertEquals("un-ece", limits.home().set());
        // The rules of the program stand below every home set.
        assertTrue(limits.find("ledger-closure").isPresent());
    }

    @Test
    void aSetNobodyHasIsAComplaintAtItsKey() {
        Complaint complaint = complaint(JobText.blank().with("job.home-set", "un-eec"));
        // The eighth line of the text is `  home-set: un-eec`.
        assertEquals("job.yaml", complaint.file());
        assertEquals(8, complaint.line());
        assertEquals(13, complaint.column());
        assertEquals("job > home-set", complaint.path());
        assertTrue(complaint.text().contains("`un-eec`") && complaint.text().contains("un-ece"), complaint.text());
        Complaint compared = complaint(JobText.blank().with("job.compared-with", "[nowhere]"));
        assertEquals(9, compared.line());
        assertEquals("job > compared-with", compared.path());
    }

    @Test
    void aNameCannotLeadOutOfTheFolder() {
        for (String name : new String[] {"../un-ece", "/etc/passwd", "a b", "sub/set"}) {
            assertTrue(
                    complaint(JobText.blank().with("job.home-set", "\"" + name + "\""))
                            .text()
                            .contains("is no name of a requirement set"),
                    name);
        }
    }

    private void own(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name + ".yaml"), text);
    }

    @Test
    void theShopsOwnFileGoesFirstAndThePaperSaysSo() throws Exception {
        own("un-ece", "{ set: un-ece, title: The shop's copy }");
        assertEquals(
                "The shop's copy (the shop's own file un-ece.yaml)",
                limits(JobText.blank()).home().title());
        own("shed", "{ set: shed, title: Rules of the shed }");
        assertEquals(
                "Rules of the shed (the shop's own file shed.yaml)",
                limits(JobText.blank().with("job.home-set", "shed")).home().title());
    }

    @Test
    void aFileThatCallsItselfSomethingElseIsRefused() throws Exception {
        own("shed", "{ set: un-ece, title: Rules of the shed }");
        assertTrue(
                complaint(JobText.blank().with("job.home-set", "shed")).text().contains("calls itself `un-ece`"));
    }

    @Test
    void nobodyReplacesTheRulesOfTheProgram() throws Exception {
        own("house", "{ set: house, title: No rules }");
        assertTrue(limits(JobText.blank()).find("ledger-closure").isPresent());
        assertTrue(complaint(JobText.blank().with("job.home-set", "house"))
                .text()
                .contains("is no name of a requirement set"));
    }

    @Test
    void aMistakeInTheShopsOwnFileIsAComplaintInThatFile() throws Exception {
        own(
                "shed",
                "set: shed\ntitle: Rules\nlimits:\n  gross-margin: { meaning: x, bound: at most, value: 3 furlong,"
                        + " document: d }\n");
        Complaint complaint = complaint(JobText.blank().with("job.home-set", "shed"));
        assertTrue(complaint.file().endsWith("shed.yaml"), complaint.file());
        assertEquals(4, complaint.line());
        assertTrue(complaint.text().contains("furlong"), complaint.text());
    }

    /** Whoever confirms a figure that is in force nowhere would otherwise believe it confirmed. */
    @Test
    void aConfirmationOfNothingIsAComplaintAtItsKey() throws Exception {
        limits(JobText.blank().confirming("un-ece", "gross-margin").confirming("tables", "tyre-load-index"));
        limits(JobText.blank().confirming("house", "ledger-closure"));
        for (String[] nothing : new String[][] {
            {"un-ece", "gros-margin"}, {"us-federal", "gross-margin"}, {"tables", "tyre-size"}, {"tables", "../tables"}
        }) {
            Complaint complaint = complaint(
                    JobText.blank().confirming("un-ece", "gross-margin").confirming(nothing[0], nothing[1]));
            assertEquals("confirmations > entry 2 > limits", complaint.path());
            assertEquals(11, complaint.line());
            assertTrue(complaint.text().contains("`" + nothing[1] + "`"), complaint.text());
        }
        limits(JobText.blank().with("job.compared-with", "[us-federal]").confirming("us-federal", "gross-margin"));
    }

    /** A job file called like a set is still a job file. */
    @Test
    void theJobFileItselfIsNoRequirementSet() throws Exception {
        Path job = Files.move(JobText.blank().writeTo(folder), folder.resolve("un-ece.yaml"));
        assertEquals("un-ece", RequirementSets.limits(JobFile.read(job)).home().set());
    }
}
