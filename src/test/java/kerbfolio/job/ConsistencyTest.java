package kerbfolio.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the sections of a job file must be together; ▸ marks where each complaint must point. */
class ConsistencyTest {
    @TempDir
    private Path folder;

    private Sheet sheet;

    @BeforeEach
    void unfold() {
        sheet = new Sheet(folder);
    }

    @Test
    void anInstrumentNamedIsAnInstrumentListed() {
        assertEquals(
                List.of(
                        "instruments > pads > calibrated-with: no instrument `mass`; known here: pads, tape",
                        "vehicle > ride-height > rear > instrument: no instrument `tap`; did you mean" + " `tape`?",
                        "weighings > as-received > instrument: no instrument `pds`; did you mean `pads`?",
                        "weighings > tilt > instrument: no instrument `padss`; did you mean `pads`?",
                        "weighings > tilt > length-instrument: no instrument `tpae`; did you mean `tape`?",
                        "parts > a > instrument: no instrument `pad`; did you mean `pads`?",
                        "removed > b > instrument: no instrument `scale`; known here: pads, tape"),
                sheet.complaints("""
                        instruments:
                          - {id: pads, calibrated-with: ▸mass}
                          - {id: tape}
                        vehicle:
                          ride-height: {rear: {instrument: ▸tap}}
                        weighings:
                          as-received: {instrument: ▸pds}
                          tilt: {instrument: ▸padss, length-instrument: ▸tpae}
                        parts: [{id: a, instrument: ▸pad}]
                        removed: [{id: b, instrument: ▸scale}]
                        """));
        assertEquals(
                List.of("weighings > as-delivered > instrument: no instrument `x`; list it under" + " instruments"),
                sheet.complaints("weighings: {as-delivered: {instrument: ▸x}}\n"));
    }

    @Test
    void aConductorIsMarkedWithASize() {
        assertEquals(
                List.of(
                        "links > a > size: `50` is no size of a conductor; write it as marked, such as 50 mm², 1/0 AWG or 250 kcmil",
                        "links > b > size: `5/0 AWG` is no size of a conductor; write it as marked, such as 50 mm², 1/0 AWG or 250 kcmil",
                        "links > c > size: `0 mm²` is no size of a conductor; write it as marked, such as 50 mm², 1/0 AWG or 250 kcmil"),
                sheet.complaints("""
                        parts: [{id: x, role: battery}, {id: y, role: heater}]
                        links:
                          - {id: a, kind: high-voltage, from: x/+, to: y/+, size: ▸50}
                          - {id: b, kind: high-voltage, from: x/+, to: y/+, size: ▸5/0 AWG}
                          - {id: c, kind: high-voltage, from: x/+, to: y/+, size: ▸0 mm²}
                          - {id: d, kind: high-voltage, from: x/+, to: y/+, size: 1/0 AWG}
                        """));
    }

    @Test
    void anInstrumentReadsWhatItsErrorIsIn() {
        assertEquals(
                List.of("weighings > as-delivered > instrument: `tape` has a fixed error of 1 mm and cannot"
                        + " have read kg; name another instrument or write its error in kg"),
                sheet.complaints("""
                        instruments: [{id: tape, fixed: 1 mm}]
                        weighings: {as-delivered: {instrument: ▸tape}}
                        """));
    }

    @Test
    void referencesNeverRunInACircle() {
        assertEquals(
                List.of("instruments > a > calibrated-with: calibrated in a circle: a, b, c; name the"
                        + " reference the first was set by"),
                sheet.complaints("""
                        instruments:
                          - {id: a, calibrated-with: ▸b}
                          - {id: b, calibrated-with: c}
                          - {id: c, calibrated-with: a}
                          - {id: d, calibrated-with: a}
                        """));
        assertEquals(
                List.of("instruments > a > calibrated-with: calibrated in a circle: a; name the reference"
                        + " the first was set by"),
                sheet.complaints("instruments: [{id: a, calibrated-with: ▸a}]\n"));
    }

    @Test
    void anIdMeansOneThing() {
        assertEquals(
                List.of(
                        "parts > a > id: `a` is the id of two entries; give one another id",
                        "removed > a > id: `a` is also the id of a part; give one of them another id",
                        "punch-list > a[b] > id: `a[b]` is no id; write at most 60 letters, digits, spaces,"
                                + " - _ or ."),
                sheet.complaints("""
                        parts: [{id: a}, {id: ▸a}]
                        removed: [{id: ▸a}]
                        punch-list: [{id: ▸"a[b]", text: t, holds: none}]
                        """));
    }

    @Test
    void aPhotoShowsSomethingKnown() throws Exception {
        String lines = """
                parts: [{id: drive-unit}]
                punch-list: [{id: 7, text: t, holds: none}]
                photos: [{file: job.yaml, subject: %s}]
                """;
        for (String known : List.of("drive-unit", "7", "weighings", "handed-over")) {
            sheet.read(Sheet.HEAD + lines.formatted(known));
        }
        assertEquals(
                List.of("photos > entry 1 > subject: nothing is called `drive-unti`; did you mean" + " `drive-unit`?"),
                sheet.complaints(lines.formatted("▸drive-unti")));
        assertEquals(
                List.of("photos > entry 1 > subject: nothing is called `sunset`; write the id of a part,"
                        + " instrument or punch-list item, or a section's name"),
                sheet.complaints(lines.formatted("▸sunset")));
    }

    @Test
    void nothingHappenedAfterTheDayOfTheJob() throws Exception {
        String later = ": 2026-04-01 is later than the job's own day, 2026-03-31; correct one of the two days";
        String lines = """
                instruments: [{id: a, due: 2026-04-01, calibrated: ▸2026-04-01}]
                weighings:
                  as-received: {date: ▸2026-04-01}
                  as-delivered: {date: ▸2026-04-01}
                  tilt: {date: ▸2026-04-01}
                punch-list:
                  - {id: 1, text: t, holds: none, due: 2026-04-01, raised: ▸2026-04-01}
                  - {id: 2, text: t, holds: none, closed: {date: ▸2026-04-01}}
                documents: [{date: ▸2026-04-01}]
                waivers: [{finding: f, by: b, reason: r, date: ▸2026-04-01}]
                not-applicable: [{check: c, by: b, reason: r, date: ▸2026-04-01}]
                confirmations: [{set: s, limits: [], edition: e, by: b, date: ▸2026-04-01}]
                """;
        assertEquals(
                List.of(
                        "instruments > a > calibrated" + later,
                        "weighings > as-received > date" + later,
                        "weighings > as-delivered > date" + later,
                        "weighings > tilt > date" + later,
                        "punch-list > 1 > raised" + later,
                        "punch-list > 2 > closed > date" + later,
                        "documents > entry 1 > date" + later,
                        "waivers > entry 1 > date" + later,
                        "not-applicable > entry 1 > date" + later,
                        "confirmations > entry 1 > date" + later),
                sheet.complaints(lines));
        String due = sheet.read(Sheet.HEAD + lines.replace("▸", "").replace("2026-04-01", "2026-03-31"))
                .job()
                .instruments()
                .get(0)
                .due()
                .toString();
        assertEquals("2026-03-31", due, "the day itself is not later");
    }

    @Test
    void nothingIsClosedBeforeItIsRaised() {
        assertEquals(
                List.of("punch-list > 1 > closed > date: closed before it was raised; correct one of the two"
                        + " days"),
                sheet.complaints(
                        "punch-list: [{id: 1, text: t, holds: none, raised: 2026-03-02, closed: {by: b, date: ▸2026-03-01}}]\n"));
    }

    @Test
    void figuresNoCarCanHaveAreRefused() {
        assertEquals(
                List.of(
                        "vehicle > wheelbase: `0 m` is no distance between wheels; write one above zero",
                        "vehicle > track > front: `0 mm` is no distance between wheels; write one above" + " zero",
                        "vehicle > seats: `2.5` cannot be; write a whole number from 1 to 100",
                        "vehicle > tyres > front > load-index: `280` cannot be; write a whole number from 0"
                                + " to 279",
                        "vehicle > tyres > front > speed-symbol: `t` is no speed symbol; did you mean `T`?",
                        "vehicle > tyres > rear > load-index: `82 ± 1` cannot be; write a whole number from"
                                + " 0 to 279",
                        "vehicle > tyres > rear > speed-symbol: `X` is no speed symbol; write the letter"
                                + " after the load index, one of A1 A2 A3 A4 A5 A6 A7 A8 B C D E F G J K L M N P Q R S T U H"
                                + " V W Y",
                        "weighings > as-received > state > occupants: `> 1` cannot be; write a whole number"
                                + " from 0 to 100"),
                sheet.complaints("""
                        vehicle:
                          wheelbase: ▸0 m
                          track: {front: ▸0 mm}
                          seats: ▸2.5
                          tyres:
                            front: {load-index: ▸280, speed-symbol: ▸t}
                            rear: {load-index: ▸82 ± 1, speed-symbol: ▸X}
                        weighings:
                          as-received: {state: {occupants: ▸"> 1"}}
                        """));
    }

    @Test
    void aWeighingGivesAxlesOrCornersOrATotal() {
        assertEquals(
                List.of(
                        "weighings > as-delivered > corners: give corners or axles, not both: axles are the"
                                + " sums of their corners",
                        "weighings > as-delivered > total: leave total out where axles or corners are given:"
                                + " it is their sum"),
                sheet.complaints("""
                        weighings:
                          as-delivered:
                            axles: {front: 500 kg}
                            ▸corners: {left-front: 250 kg}
                            total: ▸1000 kg
                        """));
    }

    @Test
    void aDegreeOfProtectionIsWrittenAsMarked() {
        assertEquals(
                List.of(
                        "parts > a > enclosure > protection: `sealed` is no degree of protection; write it as marked,"
                                + " such as IP67 or IPXXB",
                        "parts > a > connectors > p > open: `IPXXE` is no degree of protection; write it as marked,"
                                + " such as IP67 or IPXXB"),
                sheet.complaints("""
                        parts:
                          - id: a
                            enclosure: {protection: ▸sealed, open-protection: IP20}
                            connectors: [{id: p, mated: IPXXD, open: ▸IPXXE}]
                        """));
    }
}
