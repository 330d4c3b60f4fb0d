package kerbfolio.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.checks.weight.AxleMargin;
import kerbfolio.checks.weight.CentreHeight;
import kerbfolio.checks.weight.TyreSpeed;
import org.junit.jupiter.api.Test;

class ExaminationTest {
    private static List<Verdict> verdicts(Examination examination) {
        return examination.rows().stream().map(Examination.Row::verdict).toList();
    }

    @Test
    void aFindingIsNamedAfterItsCheckAndItsSubject() {
        var examination = JobText.onTwoAxles().examined(new AxleMargin());
        assertEquals(
                List.of("axle-margin/front-axle-as-delivered", "axle-margin/rear-axle-as-delivered"),
                examination.rows().stream().map(Examination.Row::id).toList());
        assertEquals("axle-margin", examination.check().id());
        assertEquals(Trade.WEIGHT, examination.check().trade());
    }

    private static JobText withoutTyres(String check) {
        return JobText.onTwoAxles()
                .without("vehicle.tyres")
                .add("not-applicable", "{ check: " + check + ", by: B. Reader, reason: solid tyres }");
    }

    @Test
    void aWholeCheckDoesNotApplyByNameAndReason() {
        var examination = withoutTyres("tyre-speed").examined(new TyreSpeed());
        assertEquals(List.of(Verdict.NOT_APPLICABLE, Verdict.NOT_APPLICABLE), verdicts(examination));
        assertEquals(
                "solid tyres",
                examination.rows().get(0).notApplicable().orElseThrow().reason());
    }

    @Test
    void oneFindingDoesNotApplyAndTheOtherDoes() {
        var examination = withoutTyres("tyre-speed/rear-axle").examined(new TyreSpeed());
        assertEquals(List.of(Verdict.NO_EVIDENCE, Verdict.NOT_APPLICABLE), verdicts(examination));
    }

    /** Who has a figure that is not met, or too close to tell, asks for a waiver, which is printed with the gate. */
    @Test
    void aFigureThatIsThereCannotBeSaidNotToApply() {
        for (String speed : List.of("200 km/h", "178 km/h ± 5 km/h", "120 km/h")) {
            var job = JobText.onTwoAxles().with("vehicle.top-speed", speed);
            List<Verdict> without = verdicts(job.examined(new TyreSpeed()));
            job.add("not-applicable", "{ check: tyre-speed, by: B. Reader, reason: never driven so fast }");
            assertEquals(without, verdicts(job.examined(new TyreSpeed())), speed);
        }
    }

    @Test
    void whatNobodyAskedForAndNobodyRecordedIsSilent() {
        var examination = JobText.onTwoAxles().examined(new CentreHeight());
        assertEquals(List.of(Verdict.NO_EVIDENCE, Verdict.NO_EVIDENCE), verdicts(examination));
        assertTrue(examination.withoutSilence().rows().isEmpty());
        var known = JobText.onTwoAxles().examined(new AxleMargin());
        assertEquals(known.rows(), known.withoutSilence().rows());
    }

    @Test
    void whatWasRecordedAndCannotBeUsedIsSaid() {
        var unnamed = JobText.onTwoAxles()
                .without("weighings.as-delivered.instrument")
                .examined(new AxleMargin());
        assertEquals(2, unnamed.withoutSilence().rows().size());
        var level = JobText.onTwoAxles()
                .with(
                        "weighings.tilt",
                        "{ instrument: pads, length-instrument: tape, loaded-radius: { front: 300 mm, rear:"
                                + " 300 mm }, steps: [{ rise: 0 mm, front-axle: 814 kg }] }")
                .examined(new CentreHeight());
        assertEquals(2, level.withoutSilence().rows().size());
    }
}
