package kerbfolio.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kerbfolio.car.Car;
import kerbfolio.check.Examination;
import kerbfolio.check.Limits;
import kerbfolio.check.RequirementSets;
import kerbfolio.check.Verdict;
import kerbfolio.checks.CheckList;
import kerbfolio.job.Gate;
import kerbfolio.job.Job;
import kerbfolio.job.JobFile;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.RecordReader;
import kerbfolio.release.GateReport;
import kerbfolio.release.GateState;
import kerbfolio.release.Reason;
import kerbfolio.release.Release;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The kit car among the samples is wrong on purpose; every fault built into it is found by name and holds its gate. */
class KitCarTest {
    private static final Path FILE = Path.of("sample-jobs/kit-car.yaml");

    private static Release release(String text) throws Complaints, IOException {
        byte[] bytes = text.getBytes(UTF_8);
        var parsed = RecordReader.read("kit-car.yaml", bytes, Job.class);
        var file = new JobFile(parsed.value(), FILE, bytes, parsed.places());
        var car = new Car(file.job());
        Limits limits = RequirementSets.limits(file);
        return new Release(
                file.job(),
                CheckList.ALL.stream()
                        .map(check -> Examination.of(check, car, limits))
                        .toList(),
                limits);
    }

    private static Map<String, Examination.Row> rows(String text) throws Complaints, IOException {
        var rows = new LinkedHashMap<String, Examination.Row>();
        release(text).spoken().forEach(e -> e.rows().forEach(row -> rows.put(row.id(), row)));
        return rows;
    }

    private static Examination.Row row(String finding) throws Complaints, IOException {
        Map<String, Examination.Row> rows = rows(Files.readString(FILE));
        assertTrue(rows.containsKey(finding), () -> finding + " is none of " + rows.keySet());
        return rows.get(finding);
    }

    /** What each fault is stands in the comments of the job file. */
    @ParameterizedTest
    @CsvSource({
        "isolation-resistance/iso-1-plus-rail, ENERGISE", // 61 kΩ at 403.2 V is 151 Ω/V
        "isolation-coverage/inverter, ENERGISE", // left out of the only reading
        "bonding/joint-box, ENERGISE", // 1.4 V at 10 A is 0.14 Ω
        "touch-protection/rear-box-opened, ENERGISE", // hand nuts over bare bars
        "touch-protection/joint-box-closed, ENERGISE", // IPXXB in the cabin
        "fuse-breaking/front-fuse, ENERGISE", // 403.2 V over 25.2 mΩ is 16 kA
        "cable-ampacity/c-main-plus, ENERGISE", // 95 °C over the inverter
        "voltage-window/heater-pack-full, ENERGISE", // made for 400 V
        "interlock-loop/charger-plug, ENERGISE", // not in the loop
        "cell-monitoring/cell-groups-of-rear-box, ENERGISE", // group 71
        "cell-voltage-limits/monitor-cell-voltage-high, ENERGISE", // 4.25 V over 4.20 V
        "cell-temperature-limits/monitor-charge-temperature-low, ENERGISE", // -5 °C under 0 °C
        "charge-stop/monitor-cell-voltage-high, ENERGISE", // only warns
        "cold-charge/monitor-charge-temperature-low, ENERGISE", // only reduces
        "string-fuse/rear-box, ENERGISE", // none at all
        "stay-live/charger-disconnect-out, ENERGISE", // joined before the disconnect
        "contactor-polarity/contactor-plus, ENERGISE", // wrong way round
        "contactor-fuse/contactor-plus, ENERGISE", // opens 600 A, the fuse begins at 900 A
        "reverse-breaking/contactor-plus, ENERGISE", // 60 A against 90 A of regeneration
        "cell-spread/cell-groups, ENERGISE", // 69 mV
        "precharge/by-the-time-set, ENERGISE", // 200 ms are 1.05 time constants
        "cable-colour/c-heater-plus, INSPECTION" // black
    })
    void aFaultIsNamedAndHolds(String finding, Gate gate) throws Exception {
        assertEquals(Verdict.NOT_MET, row(finding).verdict(), finding);
        List<String> holding = release(Files.readString(FILE)).gates().stream()
                .filter(report -> report.gate() == gate)
                .flatMap(report -> report.reasons().stream())
                .filter(reason -> reason.state() == GateState.HELD)
                .map(Reason::findings)
                .flatMap(List::stream)
                .toList();
        assertTrue(holding.contains(finding), holding.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "bonding/inverter; test current too low",
                "bonding/inlet-earth-pin; not recorded",
                "fuse-voltage/heater-fuse; only an alternating rating"
            })
    void aReadingThatProvesNothingIsNoEvidence(String finding, String why) throws Exception {
        assertEquals(Verdict.NO_EVIDENCE, row(finding).verdict());
        assertTrue(
                row(finding).finding().lack().contains(why),
                row(finding).finding().lack());
    }

    /** Ten seconds of current make 4.4 mΩ of 2.1 mΩ: 7.6 kA, which the fuse would break. It flatters, so it clears nothing. */
    @Test
    void aPulseResistanceFlattersTheFuse() throws Exception {
        String flattered = Files.readString(FILE)
                .replace("resistance: 2.1 mΩ, resistance-kind: ohmic", "resistance: 4.4 mΩ, resistance-kind: pulse");
        assertEquals(
                Verdict.MET_UNCONFIRMED,
                rows(flattered).get("fuse-breaking/front-fuse").verdict());
    }

    @Test
    void everyGateIsHeld() throws Exception {
        Map<Gate, GateState> states = release(Files.readString(FILE)).gates().stream()
                .collect(Collectors.toMap(GateReport::gate, GateReport::state));
        states.forEach((gate, state) -> assertEquals(GateState.HELD, state, gate.toString()));
    }
}
