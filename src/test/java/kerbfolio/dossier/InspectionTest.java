package kerbfolio.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.dossier.Inspection.WeightLine;
import org.junit.jupiter.api.Test;

class InspectionTest {
    private static WeightLine weight(JobText job, String what) {
        return job.dossier().inspection().weights().stream()
                .filter(line -> line.what().equals(what))
                .findFirst()
                .orElseThrow();
    }

    private static String plain(Shown shown) {
        return shown.large().replace('\u00a0', ' ');
    }

    @Test
    void eachWheelStandsBeforeAndAfter() {
        WeightLine line = weight(JobText.onFourCorners(), "left front");
        assertEquals("400.0 ± 1.2 kg", plain(line.before()));
        assertEquals("420.0 ± 1.2 kg", plain(line.after()));
        assertEquals("+20.0 ± 1.7 kg", plain(line.change()));
        assertEquals(Shown.NOTHING, line.permitted());
    }

    @Test
    void eachAxleStandsWithWhatIsPermitted() {
        WeightLine line = weight(JobText.onFourCorners(), "front axle");
        assertEquals("814.0 ± 1.7 kg", plain(line.after()));
        assertEquals("850 kg", plain(line.permitted()));
        assertTrue(line.isSum());
        assertEquals(
                "1700 kg", plain(weight(JobText.onFourCorners(), "whole car").permitted()));
    }

    @Test
    void wheelsNobodyWeighedTakeNoLine() {
        assertEquals(
                List.of("front axle", "rear axle", "whole car"),
                JobText.onTwoAxles().dossier().inspection().weights().stream()
                        .map(WeightLine::what)
                        .toList());
    }

    @Test
    void publishedMassesSayThatNobodyWeighedThem() {
        assertEquals("", JobText.onTwoAxles().dossier().inspection().receivedNote());
        String note = JobText.onTwoAxles()
                .without("weighings.as-received.instrument")
                .with("weighings.as-received.stated-by", "handbook")
                .dossier()
                .inspection()
                .receivedNote();
        assertTrue(note.contains("published figures (handbook)") && note.contains("not weighed on this car"), note);
    }

    private static JobText withParts() {
        return JobText.onTwoAxles()
                .add(
                        "parts",
                        "{ id: box, name: battery box, make: Pellin, part-number: \"007\", serial: \"0012345\", firmware: \"1.10\","
                                + " instrument: pads, mass: 300 kg, position: { x: 1200 mm, zone: tunnel } }")
                .add(
                        "removed",
                        "{ id: engine, mass: 100 kg, mass-from: maker, fate: \"scrapped, receipt 7\", putting-back: new mounts }");
    }

    @Test
    void whatWentInSaysHowItsMassIsKnown() {
        var line = withParts().dossier().inspection().fitted().get(0);
        assertEquals("battery box", line.name());
        assertEquals("tunnel", line.zone());
        assertEquals("measured", line.basis());
        assertEquals("1200 mm", plain(line.place()));
    }

    @Test
    void whatWasTakenOutSaysHowItsMassIsKnown() {
        var line = withParts().dossier().inspection().removed().get(0);
        assertEquals("engine", line.name());
        assertEquals("stated", line.basis());
        assertEquals("\u2014", plain(line.place()));
    }

    @Test
    void scalesAndLedgerStandSideBySide() {
        var sums = withParts().dossier().inspection().ledger();
        assertEquals(
                List.of("whole car", "front axle", "rear axle"),
                sums.stream().map(Inspection.LedgerSum::what).toList());
        assertEquals("+200.0 ± 2.4 kg", plain(sums.get(0).scales()));
        assertEquals("+200.0 ± 1.2 kg", plain(sums.get(0).ledger()));
        assertEquals(List.of(), JobText.onTwoAxles().dossier().inspection().ledger());
    }

    @Test
    void instrumentsAndPapersAreListed() {
        var inspection = JobText.onTwoAxles()
                .add("instruments", "{ id: bench, of-reading: 0.1 %, fixed: 0.2 kg, calibrated-with: pads }")
                .add("instruments", "{ id: eye }")
                .add("documents", "{ kind: weighbridge-ticket, number: \"007\" }")
                .dossier()
                .inspection();
        assertEquals(
                List.of("1 kg fixed", "1 mm fixed", "0.1° fixed", "0.1 % of reading, 0.2 kg fixed", "\u2014"),
                inspection.instruments().stream()
                        .map(Inspection.InstrumentLine::error)
                        .toList());
        assertEquals("axle scales 7", inspection.instruments().get(3).calibratedWith());
        assertEquals("2027-01-01", inspection.instruments().get(0).due());
        assertEquals("007", inspection.documents().get(0).number());
        assertEquals("\u2014", inspection.documents().get(0).file());
    }

    @Test
    void anInstrumentOutOfCalibrationSaysSo() {
        var instruments = JobText.blank()
                .add("instruments", "{ id: old, fixed: 1 kg, due: 2026-09-30 }")
                .dossier()
                .inspection()
                .instruments();
        assertEquals("2026-09-30, overdue", instruments.get(0).due());
    }

    @Test
    void setsAreNamedByTheirTitles() {
        var inspection = JobText.blank()
                .with("job.compared-with", "[us-federal]")
                .dossier()
                .inspection();
        assertTrue(inspection.homeSet().startsWith("UN Regulations"), inspection.homeSet());
        assertEquals(1, inspection.comparedSets().size());
    }
}
