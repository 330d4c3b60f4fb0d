package kerbfolio.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.check.Examination;
import kerbfolio.check.Limits;
import kerbfolio.check.RequirementSet;
import kerbfolio.checks.weight.FrontShare;
import kerbfolio.reading.RecordReader;
import kerbfolio.release.Release;
import org.junit.jupiter.api.Test;

class RerunTest {
    private static RequirementSet set(String evidence) throws Exception {
        String text = "{ set: calm, title: A set that asks for little, evidence: " + evidence + " }";
        return RecordReader.read("calm.yaml", text.getBytes(UTF_8), RequirementSet.class)
                .value();
    }

    /** The program's own sets ask for trades it does not examine yet, so no job of today ends with it. */
    @Test
    void zeroIfNothingHoldsAnyGateAndOneIfSomethingDoes() throws Exception {
        var job = JobText.onTwoAxles().add("documents", "{ kind: authority-paper, number: \"7\", date: 2026-09-30 }");
        String little = "{ first: [front-share] }";
        var limits = new Limits(
                set("{ transport: " + little + ", energise: " + little + ", inspection: " + little + " }"),
                set("{}"),
                List.of(),
                job.job());
        var examinations = List.of(Examination.of(new FrontShare(), job.car(), limits));
        var free = new Release(job.job(), examinations, limits);
        assertEquals(0, Rerun.exitCode(free));
        assertEquals(1, Rerun.exitCode(job.release()));
    }
}
