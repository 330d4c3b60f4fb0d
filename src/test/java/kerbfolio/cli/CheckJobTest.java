package kerbfolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import kerbfolio.JobText;
import kerbfolio.checks.CheckList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckJobTest {
    @TempDir
    private Path folder = Path.of("");

    private Typed check(JobText job) {
        return Typed.of("check", job.writeTo(folder).toString());
    }

    @Test
    void oneIfSomeGateIsHeldOrNotExamined() {
        Typed typed = check(JobText.onTwoAxles());
        assertEquals(1, typed.exitCode());
        assertTrue(typed.out().contains("Is each axle as delivered within its permitted mass?"));
        assertTrue(
                typed.out()
                        .replace('\u00a0', ' ')
                        .contains("  front axle, as delivered  36.0 ± 1.2 kg   at least 0 kg  met\n"),
                typed.out());
        assertTrue(typed.out().contains("energise    not examined  high voltage on"), typed.out());
        assertTrue(typed.out().contains("  energise: voltage class, pack: no evidence"), typed.out());
    }

    @Test
    void twoIfTheJobFileIsWrongWithEveryComplaintAtItsPlace() {
        Typed typed = check(JobText.onTwoAxles()
                .with("vehicle.wheelbse", "2500 mm")
                .with("weighings.as-delivered.axles.front", "814"));
        assertEquals(2, typed.exitCode());
        assertEquals("", typed.out());
        List<String> lines = typed.err().lines().toList();
        assertEquals(3, lines.size(), typed.err());
        assertTrue(
                lines.get(0).matches("job\\.yaml:\\d+:\\d+: .*unknown key `wheelbse`; did you mean `wheelbase`\\?"),
                lines.get(0));
        assertTrue(lines.get(1).matches("job\\.yaml:\\d+:\\d+: weighings > as-delivered > axles > front: .*"));
        assertEquals("2 complaints; nothing was written.", lines.get(2));
    }

    @Test
    void twoIfThereIsNoSuchRequirementSet() {
        Typed typed = check(JobText.blank().with("job.home-set", "nowhere"));
        assertEquals(2, typed.exitCode());
        assertTrue(typed.err().startsWith("job.yaml:8:13: job > home-set: there is no requirement set `nowhere`"));
        assertTrue(typed.err().endsWith("1 complaint; nothing was written.\n"), typed.err());
    }

    /** A waiver that waives nothing would be lost without a word. */
    @Test
    void twoIfSomethingIsWaivedThatIsNotThere() {
        Typed typed = check(JobText.onTwoAxles()
                .add("waivers", "{ finding: gross-margin/as-deliverd, by: B. Reader, reason: trailer only }")
                .add("not-applicable", "{ check: tyre-sped, by: B. Reader, reason: solid tyres }"));
        assertEquals(2, typed.exitCode());
        List<String> lines = typed.err().lines().toList();
        assertEquals(3, lines.size(), typed.err());
        assertTrue(lines.get(0).matches("job\\.yaml:\\d+:\\d+: waivers > entry 1 > finding: .*"), lines.get(0));
        assertTrue(lines.get(0).endsWith("did you mean `gross-margin/as-delivered`?"), lines.get(0));
        assertTrue(lines.get(1).endsWith("did you mean `tyre-speed`?"), lines.get(1));
    }

    @Test
    void aWaiverAndANotApplicableThatMeanSomethingArePassed() {
        Typed typed = check(JobText.onTwoAxles()
                .without("vehicle.tyres")
                .add("waivers", "{ finding: gross-margin/as-delivered, by: B. Reader, reason: trailer only }")
                .add("not-applicable", "{ check: tyre-speed, by: B. Reader, reason: solid tyres }")
                .add("not-applicable", "{ check: tyre-load/rear-axle-as-delivered, by: B. Reader, reason: tracks }"));
        assertEquals(1, typed.exitCode(), typed.err());
        assertTrue(typed.out().contains("not applicable"), typed.out());
    }

    @Test
    void threeIfThereIsNoFile() {
        Typed typed = Typed.of("check", folder.resolve("none.yaml").toString());
        assertEquals(3, typed.exitCode());
        assertEquals("There is no file " + folder.resolve("none.yaml"), typed.sentence());
        Typed inside = Typed.of("check", folder.resolve("no/such/none.yaml").toString());
        assertEquals(3, inside.exitCode());
        assertTrue(inside.sentence().startsWith("There is no file"));
    }

    @Test
    void threeIfTheFileIsAFolder() {
        Typed typed = Typed.of("check", folder.toString());
        assertEquals(3, typed.exitCode());
        assertTrue(typed.sentence().endsWith("is a folder and no job file"), typed.err());
    }

    @Test
    void itWritesNothing() throws IOException {
        check(JobText.onTwoAxles());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void everyQuestionFitsATerminal() {
        CheckList.ALL.forEach(check -> assertTrue(check.question().length() <= 100, check.question()));
    }

    @Test
    void aRecordThatLacksMuchStillFitsATerminal() {
        String out = check(JobText.blank()).out();
        assertTrue(out.lines().allMatch(line -> line.length() <= 100), out);
        assertTrue(out.contains("and ") && out.contains(" more\n"), out);
    }
}
