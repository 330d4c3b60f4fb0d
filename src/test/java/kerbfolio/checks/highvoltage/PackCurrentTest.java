package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** By hand, of the ratings of the sound car: 350 A of 400 A; 180 A of 200 A (80 % of 250 A); 80 A of 120 A; 18 A of 24 A (80 % of 30 A). */
class PackCurrentTest {
    private final JobText job = TractionText.sound();

    private List<String> subjects() {
        return job.examined(new PackCurrent()).rows().stream()
                .map(row -> row.finding().subject())
                .toList();
    }

    @Test
    void eachDutyNamesItsWeakest() {
        assertEquals(
                List.of(
                        "drive, weakest: module",
                        "drive without end, weakest: front-fuse",
                        "regeneration, weakest: module",
                        "charge, weakest: aux-fuse"),
                subjects());
        assertEquals(
                87.5, job.found(new PackCurrent(), "drive, weakest: module").value(), 1e-9);
        assertEquals(
                90,
                job.found(new PackCurrent(), "drive without end, weakest: front-fuse")
                        .value(),
                1e-9);
        assertEquals(
                66.67,
                job.found(new PackCurrent(), "regeneration, weakest: module").value(),
                0.005);
        assertEquals(
                75, job.found(new PackCurrent(), "charge, weakest: aux-fuse").value(), 1e-9);
        assertEquals(
                Verdict.MET,
                job.found(new PackCurrent(), "charge, weakest: aux-fuse").verdict());
    }

    @Test
    void aConnectorBelowTheCurrentIsNotMet() {
        job.alter("parts", "rear-box", "peak-current: 400 A", "peak-current: 300 A");
        assertEquals(
                Verdict.NOT_MET,
                job.found(new PackCurrent(), "drive, weakest: rear-box-plug").verdict());
    }

    @Test
    void aCableBelowTheCurrentIsNotMet() {
        job.alter("links", "c-plus", "330 A", "190 A");
        assertEquals(
                Verdict.NOT_MET,
                job.found(new PackCurrent(), "drive without end, weakest: c-plus")
                        .verdict());
    }

    @Test
    void aCurrentInDoubtIsUndecided() {
        job.with("pack.currents", "{ from: settings, drive: 399 A ± 5 A }");
        assertEquals(
                Verdict.UNDECIDED,
                job.found(new PackCurrent(), "drive, weakest: module").verdict());
    }

    /** 180 A over two strings are 90 A in each module and fuse; contactors and plugs of the trunk carry all of it. */
    @Test
    void modulesOfStringsSideBySideShareTheCurrent() {
        job.with("pack.strings", "\"2\"")
                .alter("parts", "contactor-minus", "continuous-current: 250 A", "continuous-current: 170 A");
        assertEquals(
                Verdict.NOT_MET,
                job.found(new PackCurrent(), "drive without end, weakest: contactor-minus")
                        .verdict());
    }

    /** What an inlet for direct current brings passes the trunk and not the charger's branch. */
    @Test
    void anInletForDirectCurrentTakesThePlaceOfTheCharger() {
        job.add("links", "{ id: c-dc, kind: high-voltage, from: inlet, to: junction-box }")
                .with("pack.currents", "{ from: settings, charge: 100 A }");
        assertTrue(
                subjects().contains("charge, weakest: inlet-socket"), subjects().toString());
    }

    @Test
    void whatIsNotRecordedStandsBesideWhatIs() {
        job.alter("parts", "contactor-plus", ", peak-current: 400 A", "")
                .alter("parts", "front-box", ", peak-current: 400 A", "")
                .alter(
                        "parts",
                        "disconnect",
                        "electrical: { from: maker, max-voltage: 500 V, continuous-current: 250 A, peak-current: 400 A }",
                        "electrical: { from: maker, peak-current: 340 A }");
        assertEquals(
                Verdict.NOT_MET,
                job.found(new PackCurrent(), "drive, weakest: disconnect").verdict());
        var unknown = job.found(new PackCurrent(), "drive, ratings not known");
        assertEquals(Verdict.NO_EVIDENCE, unknown.verdict());
        assertEquals(
                List.of(
                        "parts[contactor-plus].electrical.peak-current",
                        "parts[front-box].connectors[front-box-plug].peak-current"),
                unknown.missing());
    }

    @Test
    void aCableInAnAmbientAtItsLimitSaysSo() {
        job.alter("links", "c-plus", "ambient: 60 °C", "ambient: 160 °C");
        var unknown = job.found(new PackCurrent(), "drive without end, ratings not known");
        assertEquals(Verdict.NO_EVIDENCE, unknown.verdict());
        assertTrue(unknown.why().contains("needs T_amb < T_max"), unknown.why());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var rows = JobText.blank().examined(new PackCurrent()).rows();
        assertEquals(4, rows.size());
        assertTrue(rows.stream().allMatch(row -> row.verdict() == Verdict.NO_EVIDENCE));
        assertEquals(
                List.of("pack.currents.drive", "pack.strings", "pack.module.peak-current"),
                new Found(rows.get(0).finding()).missing());
    }
}
