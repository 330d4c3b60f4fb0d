package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kerbfolio.JobText;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Term;
import kerbfolio.quantity.Quantity;
import kerbfolio.source.Table;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Rectangular distributions, u = a/√3 (JCGM 100:2008, 4.3.7); the triple of scales out of calibration is our rule. */
class EvidenceTest {
    private static final double ROOT_3 = Math.sqrt(3);

    private final JobText job = JobText.blank()
            .add("instruments", "{ id: reference, of-reading: 0.05 %, due: 2027-06-30 }")
            .add(
                    "instruments",
                    "{ id: pads, kind: pads, serial: \"7\", of-reading: 0.1 %, fixed: 0.5 kg,"
                            + " calibrated-with: reference, calibrated: 2026-01-01, due: 2026-12-31 }")
            .add("instruments", "{ id: unknown-error, kind: bathroom scales, due: 2027-06-30 }");

    private Term read(String figure, @Nullable String instrument, @Nullable String day) {
        return new Evidence(job.job())
                .measured(
                        "here",
                        "mass",
                        "kg",
                        Quantity.of(figure),
                        instrument,
                        day == null ? null : LocalDate.parse(day));
    }

    private static Map<String, Double> effects(Term term) {
        return term.amount().orElseThrow().effects();
    }

    @Test
    void aReadingCarriesItsInstrumentAndItsReference() {
        Term term = read("400 kg", "pads", "2026-10-01");
        assertEquals(Basis.MEASURED, term.basis());
        assertEquals("pads 7, 2026-10-01", term.origin());
        // 0.5 kg of its own; 0.1 % and 0.05 % of 400 kg, shared with every reading of the same instrument.
        assertEquals(
                Set.of("here", "instruments[pads].of-reading", "instruments[reference].of-reading"),
                effects(term).keySet());
        assertEquals(0.5 / ROOT_3, effects(term).get("here"), 1e-12);
        assertEquals(0.4 / ROOT_3, effects(term).get("instruments[pads].of-reading"), 1e-12);
        assertEquals(0.2 / ROOT_3, effects(term).get("instruments[reference].of-reading"), 1e-12);
        assertEquals(List.of(), term.reservations());
    }

    /** By hand: 0.1 % of 1000 lb is 1 lb. */
    @Test
    void aShareOfAReadingIsOfTheReadingInItsOwnUnit() {
        Term term = read("1000 lb", "pads", "2026-10-01");
        assertEquals(0.45359237 / ROOT_3, effects(term).get("instruments[pads].of-reading"), 1e-12);
    }

    @Test
    void aPlusMinusGoesBeforeTheInstrument() {
        Term term = read("400 kg ± 2 kg", "pads", "2026-10-01");
        assertEquals(Map.of("here", 2 / ROOT_3), effects(term));
    }

    @Test
    void anInstrumentOfUnknownErrorIsTrustedToHalfItsLastDigitAndDoesNotClear() {
        Term term = read("400.5 kg", "unknown-error", "2026-10-01");
        assertEquals(0.05 / ROOT_3, effects(term).get("here"), 1e-12);
        assertTrue(term.reservations().toString().contains("no limit of error is recorded for bathroom scales"));
    }

    @Test
    void calibrationCountsOnTheDayOfTheReading() {
        assertEquals(List.of(), read("400 kg", "pads", "2026-12-31").reservations());
        assertEquals(
                List.of("pads 7 was out of calibration on 2027-01-01"),
                read("400 kg", "pads", "2027-01-01").reservations());
        assertEquals(List.of(), read("400 kg", "pads", "2026-01-01").reservations());
        assertEquals(
                List.of("pads 7 was out of calibration on 2025-12-31"),
                read("400 kg", "pads", "2025-12-31").reservations());
    }

    @Test
    void aReferenceOutOfCalibrationSpoilsWhatWasSetAgainstIt() {
        job.add("instruments", "{ id: bench, fixed: 0.5 kg, calibrated-with: old, due: 2027-06-30 }")
                .add("instruments", "{ id: old, kind: old weights, of-reading: 0.05 %, due: 2026-08-31 }");
        Term term = read("400 kg", "bench", "2026-10-01");
        assertEquals(List.of("old weights was out of calibration on 2026-10-01"), term.reservations());
        assertEquals(3 * 0.5 / ROOT_3, effects(term).get("here"), 1e-12);
    }

    @Test
    void aCalibrationNobodyRecordedDoesNotClear() {
        job.add("instruments", "{ id: bench, fixed: 0.5 kg, calibrated: 2026-01-01 }");
        Term term = read("400 kg", "bench", "2026-10-01");
        assertEquals(List.of("no calibration is recorded for bench"), term.reservations());
        assertEquals(0.5 / ROOT_3, effects(term).get("here"), 1e-12);
    }

    @Test
    void aReadingOfUnknownDayDoesNotClear() {
        Term term = read("400 kg", "pads", null);
        assertEquals(List.of("the day of a reading with pads 7 is not recorded"), term.reservations());
        assertEquals("pads 7", term.origin());
    }

    @Test
    void outOfCalibrationEveryCauseCountsThreeTimes() {
        Map<String, Double> in = effects(read("400 kg", "pads", "2026-12-31"));
        Map<String, Double> out = effects(read("400 kg", "pads", "2027-01-01"));
        in.forEach((cause, effect) -> assertEquals(3 * effect, out.get(cause), 1e-12, cause));
        assertEquals(
                3 * 2 / ROOT_3,
                effects(read("400 kg ± 2 kg", "pads", "2027-01-01")).get("here"),
                1e-12);
    }

    @Test
    void whatCannotBeUsedIsAbsentAndSaysWhy() {
        assertEquals(
                "no instrument is named for 400 kg",
                read("400 kg", null, "2026-10-01").origin());
        assertEquals(
                "reads > 400 kg, a bound and not a value",
                read("> 400 kg", "pads", "2026-10-01").origin());
        assertEquals(
                "not recorded",
                new Evidence(job.job())
                        .measured("here", "mass", "kg", null, "pads", null)
                        .origin());
        assertEquals(Basis.ABSENT, read("400 kg", null, "2026-10-01").basis());
    }

    private Term stated(String figure, @Nullable String by) {
        return new Evidence(job.job()).stated("here", "mass", "kg", Quantity.of(figure), by);
    }

    @Test
    void aStatedFigureIsExactUnlessItSaysOtherwise() {
        assertEquals(Map.of(), effects(stated("400 kg", "plate")));
        assertEquals(Map.of("here", 5 / ROOT_3), effects(stated("400 kg ± 5 kg", "plate")));
        assertEquals(Basis.STATED, stated("400 kg", "plate").basis());
        assertEquals("plate", stated("400 kg", "plate").origin());
        assertTrue(stated("< 400 kg", "plate").amount().isEmpty());
    }

    @Test
    void whatNobodyStandsForDoesNotClear() {
        assertEquals(
                List.of("nobody is named who states mass"),
                stated("400 kg", null).reservations());
        assertEquals("nobody is named for it", stated("400 kg", null).origin());
        assertEquals("nobody is named for it", stated("400 kg", " ").origin());
        assertEquals(List.of(), stated("400 kg", "plate").reservations());
    }

    @Test
    void aPublishedFigureMayHoldButNotClear() {
        Term term = new Evidence(job.job()).published("here", "mass", "kg", Quantity.of("400 kg"), "handbook");
        assertEquals(Basis.STATED, term.basis());
        assertEquals("handbook", term.origin());
        assertEquals(List.of("mass is published and was not weighed on this car"), term.reservations());
        assertEquals(
                Basis.ABSENT,
                new Evidence(job.job())
                        .published("here", "mass", "kg", null, "handbook")
                        .basis());
    }

    @Test
    void aRoundedFigureIsGoodToHalfItsLastDigit() {
        var evidence = new Evidence(job.job());
        Term term = evidence.rounded("here", "mass", "kg", Quantity.of("388 kg"), "shop");
        assertEquals(Map.of("here", 0.5 / ROOT_3), effects(term));
        Term closer = evidence.rounded("here", "mass", "kg", Quantity.of("388 kg ± 0.1 kg"), "shop");
        assertEquals(Map.of("here", 0.1 / ROOT_3), effects(closer));
        assertTrue(evidence.rounded("here", "mass", "kg", null, "shop").amount().isEmpty());
    }

    @Test
    void aTableClearsOnlyWhereTheShopConfirmedIt() {
        Table table = Table.of("tyre-load-index");
        Term term = new Evidence(job.job()).tabled(table, "here", "load", "91");
        assertEquals(615, term.amount().orElseThrow().si(), 0);
        assertEquals(List.of("table tyre-load-index is not confirmed against the document"), term.reservations());
        Term confirmed =
                new Evidence(job.confirming("tables", "tyre-load-index").job()).tabled(table, "here", "load", "91");
        assertEquals(List.of(), confirmed.reservations());
        assertEquals(
                "`999` is not in table tyre-load-index",
                new Evidence(job.job()).tabled(table, "here", "load", "999").origin());
        assertTrue(new Evidence(job.job())
                .tabled(table, "here", "load", null)
                .amount()
                .isEmpty());
    }
}
