package kerbfolio.job;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What pack, readings and labels speak of must be there; ▸ marks where each complaint must point. */
class MentionsTest {
    private static final String PARTS = """
            parts:
              - {id: box, role: battery, connectors: [{id: plug}]}
              - {id: inverter, role: inverter}
              - {id: resistor, role: precharge-resistor}
            links: [{id: cable, kind: high-voltage, from: box, to: inverter}]
            """;

    @TempDir
    private Path folder;

    private Sheet sheet;

    @BeforeEach
    void unfold() {
        sheet = new Sheet(folder);
    }

    @Test
    void thePackSpeaksOfBoxesThatAreThere() {
        assertEquals(
                List.of(
                        "pack > boxes > entry 1 > part: no part of role battery `bxo`; did you mean `box`?",
                        "pack > boxes > entry 2 > part: no part of role battery `inverter`; write the id of one"
                                + " that is recorded",
                        "pack > boxes > entry 4 > part: `box` stands here twice; write all its modules in one entry",
                        "pack > precharge > resistor: no part of role precharge-resistor `box`; write the id of one"
                                + " that is recorded",
                        "pack > monitors > entry 1 > part: no part `bms`; write the id of one that is recorded",
                        "pack > monitors > entry 1 > watches > entry 1 > part: no part of role battery `rear`;"
                                + " write the id of one that is recorded"),
                sheet.complaints(PARTS + """
                        pack:
                          boxes: [{part: ▸bxo}, {part: ▸inverter}, {part: box}, {part: ▸box}]
                          precharge: {resistor: ▸box}
                          monitors: [{part: ▸bms, watches: [{part: ▸rear}, {part: box}]}]
                        """));
    }

    @Test
    void aReadingIsOfSomethingThatIsThere() {
        assertEquals(
                List.of(
                        "readings > isolation > i > joined > entry 2: no part `invertre`; did you mean `inverter`?",
                        "readings > isolation-monitor > isolation: no isolation reading `j`; did you mean `i`?",
                        "readings > bonding > entry 1 > of: no part `door`; write the id of one that is recorded",
                        "readings > decay > entry 1 > of: no part `cable`; write the id of one that is recorded"),
                sheet.complaints(PARTS + """
                        readings:
                          isolation: [{id: i, method: tester, joined: [box, ▸invertre]}]
                          isolation-monitor: {isolation: ▸j}
                          bonding: [{of: ▸door}]
                          decay: [{of: ▸cable}]
                        """));
        assertEquals(
                List.of("readings > isolation-monitor > isolation: no isolation reading `i`; none is recorded"),
                sheet.complaints("readings: {isolation-monitor: {isolation: ▸i}}\n"));
    }

    @Test
    void aLabelIsOnAPartOrALink() {
        assertEquals(
                List.of("labels > entry 3 > on: no part or link `cabel`; did you mean `cable`?"),
                sheet.complaints(PARTS + "labels: [{on: box, shows: warning-symbol}, {on: cable, shows: orange-cover},"
                        + " {on: ▸cabel, shows: orange-cover}]\n"));
    }

    @Test
    void aPhotoMayShowALinkAConnectorOrAReading() {
        String lines = PARTS + """
                readings: {isolation: [{id: i-1, method: tester}]}
                photos: [{file: job.yaml, subject: cable}, {file: job.yaml, subject: plug}, {file: job.yaml, subject: i-1}]
                """;
        assertDoesNotThrow(() -> sheet.read(Sheet.HEAD + lines));
    }

    @Test
    void aReadingIsMadeByAnInstrumentThatReadsItsUnit() {
        String wrong = " and cannot have read ";
        assertEquals(
                List.of(
                        "readings > isolation > i > instrument: no instrument `tster`; did you mean `tester`?",
                        "readings > isolation > i > resistor-instrument: `clamp` has a fixed error of 0.1 A" + wrong
                                + "Ω; name another instrument or write its error in Ω",
                        "readings > isolation-monitor > instrument: `clamp` has a fixed error of 0.1 A" + wrong
                                + "Ω; name another instrument or write its error in Ω",
                        "readings > bonding > entry 1 > instrument: `clamp` has a fixed error of 0.1 A" + wrong
                                + "V; name another instrument or write its error in V",
                        "readings > bonding > entry 1 > current-instrument: `meter` has a fixed error of 0.1 V" + wrong
                                + "A; name another instrument or write its error in A",
                        "readings > decay > entry 1 > instrument: `clamp` has a fixed error of 0.1 A" + wrong
                                + "V; name another instrument or write its error in V",
                        "readings > decay > entry 1 > time-instrument: `meter` has a fixed error of 0.1 V" + wrong
                                + "s; name another instrument or write its error in s",
                        "readings > cells > instrument: no instrument `bms`; known here: meter, clamp, tester",
                        "readings > charge > instrument: `meter` has a fixed error of 0.1 V" + wrong
                                + "%; name another instrument or write its error in %"),
                sheet.complaints(PARTS + """
                        instruments: [{id: meter, fixed: 0.1 V}, {id: clamp, fixed: 0.1 A}, {id: tester}]
                        readings:
                          isolation: [{id: i, method: tester, instrument: ▸tster, resistor-instrument: ▸clamp}]
                          isolation-monitor: {instrument: ▸clamp}
                          bonding: [{of: box, instrument: ▸clamp, current-instrument: ▸meter}]
                          decay: [{of: box, instrument: ▸clamp, time-instrument: ▸meter}]
                          cells: {instrument: ▸bms}
                          charge: {instrument: ▸meter}
                        """));
    }

    @Test
    void whatAMonitorOfTheCarShowsIsReadOffThatPart() {
        assertDoesNotThrow(() -> sheet.read(Sheet.HEAD + PARTS + """
                readings:
                  isolation: [{id: i, method: monitor, instrument: inverter}]
                  cells: {instrument: box}
                """));
    }

    @Test
    void noReadingAndNoLabelIsLaterThanTheJob() {
        String later = ": 2026-04-01 is later than the job's own day, 2026-03-31; correct one of the two days";
        assertEquals(
                List.of(
                        "readings > isolation > i > date" + later,
                        "readings > isolation-monitor > date" + later,
                        "readings > bonding > entry 1 > date" + later,
                        "readings > decay > entry 1 > date" + later,
                        "readings > cells > date" + later,
                        "readings > charge > date" + later,
                        "labels > entry 1 > date" + later),
                sheet.complaints(PARTS + """
                        readings:
                          isolation: [{id: i, method: tester, date: ▸2026-04-01}]
                          isolation-monitor: {date: ▸2026-04-01}
                          bonding: [{of: box, date: ▸2026-04-01}]
                          decay: [{of: box, date: ▸2026-04-01}]
                          cells: {date: ▸2026-04-01}
                          charge: {date: ▸2026-04-01}
                        labels: [{on: box, shows: disconnect, date: ▸2026-04-01}]
                        """));
    }
}
