package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/**
 * Voltages by hand: 32 and 56 groups of 4.2 V are 134.4 V and 235.2 V. 60 V of direct current: UN R100, definition of
 * high voltage (more than 60 V); here taken as confirmed.
 */
class StayLiveTest {
    private final JobText job = TractionText.sound().confirming("un-ece", "low-voltage");

    private Found of(String subject) {
        return job.found(new StayLive(), subject);
    }

    private void wireChargerPast() {
        job.drop("links", "c-charger-minus")
                .add("links", "{ id: astray, kind: high-voltage, from: charger/-, to: front-box/- }");
    }

    @Test
    void nothingIsLeftBeyondADisconnectBetweenTheBoxes() {
        var rows = job.examined(new StayLive()).rows();
        assertEquals(5, rows.size());
        rows.forEach(row ->
                assertEquals(Verdict.MET, row.finding().verdict(), row.finding().subject()));
        assertEquals(0, of("inverter, disconnect out").value());
    }

    @Test
    void aFigureNobodyConfirmedDoesNotClear() {
        assertEquals(
                Verdict.MET_UNCONFIRMED,
                TractionText.sound()
                        .found(new StayLive(), "inverter, disconnect out")
                        .verdict());
    }

    @Test
    void aDisconnectThatLeavesTheChargerLiveIsNamed() {
        wireChargerPast();
        assertEquals(134.4, of("charger, disconnect out").value(), 1e-9);
        assertEquals(Verdict.NOT_MET, of("charger, disconnect out").verdict());
        assertEquals(Verdict.MET, of("heater, disconnect out").verdict());
    }

    @Test
    void sixtyVoltsAreLowAndWhatLiesAtTheEdgeIsTooCloseToTell() {
        wireChargerPast();
        // 8 modules of 4 groups: 1.875 V a group is 60 V; ± 0.01 V a group is ± 0.37 V.
        assertEquals(Verdict.MET, at("1.875 V").verdict());
        assertEquals(Verdict.NOT_MET, at("1.876 V").verdict());
        assertEquals(Verdict.UNDECIDED, at("1.875 V ± 0.010 V").verdict());
    }

    private Found at(String cell) {
        job.with("pack.cell", "{ from: maker, max-voltage: " + cell + " }");
        return of("charger, disconnect out");
    }

    @Test
    void aContactorIsNoDisconnect() {
        job.alter("parts", "disconnect", "role: disconnect", "role: current-sensor");
        Found found = job.found(new StayLive());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts"), found.missing());
    }

    @Test
    void aConverterThatFeedsBackMayBringTheWholeVoltage() {
        job.alter("parts", "converter", "feeds-back: no", "feeds-back: yes");
        assertEquals(369.6, of("converter, disconnect out").value(), 1e-9);
        assertEquals(Verdict.NOT_MET, of("converter, disconnect out").verdict());
    }

    @Test
    void aConverterOfWhichNobodySaysWhetherItFeedsBackIsNoEvidence() {
        job.alter("parts", "converter", ", feeds-back: no", "");
        Found found = of("converter, disconnect out");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts[converter].electrical.feeds-back"), found.missing());
        wireChargerPast();
        job.alter("parts", "charger", ", feeds-back: no", "");
        assertEquals(
                134.4, of("charger, disconnect out").value(), 1e-9, "what is live is live, whatever else is unknown");
    }

    @Test
    void boxesOfUnknownVoltageAreNoEvidence() {
        job.drop("pack.boxes", "front-box");
        wireChargerPast();
        assertEquals(List.of("pack.boxes"), of("charger, disconnect out").missing());
    }

    @Test
    void boxesInAShortCircuitAreNoEvidence() {
        job.add("links", "{ id: wrong, kind: busbar, from: rear-box/+, to: rear-box/- }");
        Found found = of("inverter, disconnect out");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("at different voltages"), found.why());
    }

    @Test
    void linksNobodyRecordedAreNoEvidence() {
        Found found = job.without("links").found(new StayLive());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("links"), found.missing());
    }
}
