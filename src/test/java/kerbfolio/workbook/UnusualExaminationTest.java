package kerbfolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Bound;
import kerbfolio.check.Check;
import kerbfolio.check.Examination;
import kerbfolio.check.Finding;
import kerbfolio.check.Limit;
import kerbfolio.check.Limits;
import kerbfolio.check.Standing;
import kerbfolio.check.Trade;
import kerbfolio.dossier.Dossier;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Plain;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.job.NotApplicable;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.source.Citation;
import org.junit.jupiter.api.Test;

/** What the weight trade does not bring and other trades will: each is written, and a spreadsheet engine agrees. */
class UnusualExaminationTest {
    private static final Citation NOWHERE = new Citation("made for this test", "");

    private static final Formula WARMEST = Formula.of("T = T_a + R*P")
            .giving("warmest", "°C")
            .with("T_a", "surroundings", "°C")
            .with("R", "rise for each watt", "K/W")
            .with("P", "loss", "kW")
            .needs("P >= 0*[W]")
            .from(NOWHERE)
            .build();

    private static final Formula LARGER = Formula.of("m = max(a, b)")
            .giving("larger of two", "kg")
            .with("a", "one", "kg")
            .with("b", "other", "kg")
            .from(NOWHERE)
            .build();

    private static final Formula RATIO = Formula.of("r = a/b")
            .giving("ratio", "1")
            .with("a", "one", "kg")
            .with("b", "other", "kg")
            .needs("a > 0*[kg]")
            .needs("b > 0*[kg]")
            .from(NOWHERE)
            .build();

    private static final Formula ALL = Formula.of("m = sum(m_i) + sum(m_i*q_i) + sum(m_i^2)/a")
            .giving("all together", "kg")
            .each("m_i", "each", "kg")
            .each("q_i", "share of each", "%")
            .with("a", "any", "kg")
            .from(NOWHERE)
            .build();

    private static Known known(String path, String quantity, double effect) {
        Quantity written = Quantity.of(quantity);
        return new Known(
                path,
                path,
                written,
                new Amount(written.si(), Map.of(path, effect)),
                Basis.MEASURED,
                "by hand",
                List.of());
    }

    private static Limit limit(String key, Bound bound, String value) {
        return new Limit("test", key, key, bound, Quantity.of(value), NOWHERE, Standing.OWN_RULE);
    }

    private record Asked(Trade trade, String question) implements Check {
        @Override
        public Optional<Gate> gate() {
            return Optional.empty();
        }

        @Override
        public Stream<Finding> examine(Car car, Limits limits) {
            return Stream.empty();
        }

        @Override
        public String id() {
            return "asked";
        }
    }

    private static Examination.Row row(String subject, Term result, Limit limit) {
        var finding = new Finding(subject, result, Optional.of(limit), List.of());
        return new Examination.Row("asked/" + subject, finding, Optional.empty());
    }

    private static Opened written(Examination... examinations) {
        Dossier d = IssuedJob.sample("first").dossier();
        Opened opened = Opened.of(Workbook.write(new Dossier(
                d.head(),
                d.handover(),
                d.inspection(),
                d.workshop(),
                d.workings(),
                d.unexamined(),
                d.cautions(),
                List.of(examinations),
                d.car(),
                d.units(),
                d.limits())));
        opened.assertWorksOut();
        return opened;
    }

    private static String verdict(Opened opened, String sheet, String question, String subject) {
        return opened.cell(sheet, opened.row(sheet, question, 0, subject), TradeSheet.VERDICT)
                .getStringCellValue();
    }

    @Test
    void aTemperatureKeepsItsOffsetOnEverySheet() {
        Working cooling = Working.fill(WARMEST)
                .put("T_a", known("readings.air", "68 °F", 0.5))
                .put("R", known("readings.rise", "0.02 K/W", 0))
                .put("P", known("readings.loss", "1500 W", 10))
                .work();
        // By hand: 68 °F is 20 °C; 0.02 K/W times 1500 W is 30 K; together 50 °C, 10 K under 60 °C, 18 °F under 140 °F.
        Opened opened = written(
                new Examination(
                        new Asked(Trade.COOLING, "Is it cool?"),
                        List.of(row("SI", cooling, limit("warmest", Bound.AT_MOST, "60 °C")))),
                new Examination(
                        new Asked(Trade.LOWVOLTAGE, "Is it cool in other words?"),
                        List.of(row("US", cooling, limit("warmest in F", Bound.BELOW, "140 °F")))));
        for (var expected : Map.of("Cooling", "SI", "Low voltage", "US").entrySet()) {
            String question = expected.getValue().equals("SI") ? "Is it cool?" : "Is it cool in other words?";
            int at = opened.row(expected.getKey(), question, 0, expected.getValue());
            assertEquals(
                    50, opened.cell(expected.getKey(), at, TradeSheet.RESULT).getNumericCellValue(), 1e-9);
            assertEquals(
                    60, opened.cell(expected.getKey(), at, TradeSheet.LIMIT).getNumericCellValue(), 1e-9);
            assertEquals(
                    10, opened.cell(expected.getKey(), at, TradeSheet.MARGIN).getNumericCellValue(), 1e-9);
            assertEquals(
                    "met",
                    opened.cell(expected.getKey(), at, TradeSheet.VERDICT).getStringCellValue());
        }
    }

    @Test
    void whatASmallMoveWouldTurnIntoAnotherLawStaysUndecided() {
        Working turning = Working.fill(LARGER)
                .put("a", known("readings.a", "100 kg", 1))
                .put("b", known("readings.b", "100.5 kg", 1))
                .work();
        assertTrue(turning.flips());
        Opened opened = written(new Examination(
                new Asked(Trade.BRAKES, "Which?"), List.of(row("it", turning, limit("far", Bound.AT_MOST, "500 kg")))));
        assertEquals("undecided", verdict(opened, "Brakes", "Which?", "it"));
    }

    @Test
    void sumsOverListsTakeTheirRangeFromAnotherTradesSheet() {
        List<Term> masses = List.of(known("parts[a].mass", "10 lb", 0.1), known("parts[b].mass", "20 kg", 0.1));
        List<Term> shares = List.of(known("parts[a].share", "50 %", 0), known("parts[b].share", "25 %", 0));
        Working all = Working.fill(ALL)
                .each("m_i", masses)
                .each("q_i", shares)
                .put("a", known("readings.any", "1 kg", 0))
                .work();
        Working again = Working.fill(ALL)
                .each("m_i", masses)
                .each("q_i", shares)
                .put("a", new Plain(all))
                .work();
        Opened opened = written(
                new Examination(
                        new Asked(Trade.MOUNTING, "How much?"),
                        List.of(row("it", all, limit("much", Bound.AT_LEAST, "0 kg")))),
                new Examination(
                        new Asked(Trade.HIGHVOLTAGE, "And now?"),
                        List.of(row("it", again, limit("much", Bound.AT_LEAST, "0 kg")))));
        // By hand: 4.5359237 + 20 + (2.26796185 + 5) + (20.574603812 + 400) = 452.378489...
        int at = opened.row("Mounting", "How much?", 0, "it");
        assertEquals(
                4.5359237 + 20 + 2.26796185 + 5 + 4.5359237 * 4.5359237 + 400,
                opened.cell("Mounting", at, TradeSheet.RESULT).getNumericCellValue(),
                1e-9);
        int further = opened.row("High voltage", "And now?", 0, "it");
        String formula = opened.cell("High voltage", further, TradeSheet.RESULT).getCellFormula();
        assertTrue(formula.contains("SUMPRODUCT(Mounting!B"), formula);
    }

    @Test
    void anEmptyListSumsToNothing() {
        Working none = Working.fill(ALL)
                .each("m_i", List.of())
                .each("q_i", List.of())
                .put("a", known("readings.any", "1 kg", 0))
                .work();
        Opened opened = written(new Examination(
                new Asked(Trade.DRIVE, "How much?"), List.of(row("it", none, limit("much", Bound.AT_LEAST, "0 kg")))));
        int at = opened.row("Drive", "How much?", 0, "it");
        assertEquals(0, opened.cell("Drive", at, TradeSheet.RESULT).getNumericCellValue());
    }

    @Test
    void aFigureWithoutAFormulaIsJudgedFromTheSheetOfReadings() {
        Limit limit = limit("few", Bound.ABOVE, "3 V");
        Opened opened = written(new Examination(
                new Asked(Trade.FUNCTION, "Is there any?"),
                List.of(
                        row("read", known("readings.volts", "12 V", 0.1), limit),
                        row("not read", Absent.unrecorded("readings.more", "more", "V"), limit))));
        assertEquals("met", verdict(opened, "Function tests", "Is there any?", "read"));
        assertEquals("no evidence", verdict(opened, "Function tests", "Is there any?", "not read"));
    }

    @Test
    void whatSomebodySaysDoesNotApplySaysSoOnlyWhereNothingIsRecorded() {
        var entry = new NotApplicable("asked", "E. Varley", LocalDate.of(2026, 10, 9), "no such part");
        Known volts = known("readings.volts", "12 V", 0.1);
        Opened opened = written(new Examination(
                new Asked(Trade.LIFTING, "Is there any?"),
                List.of(
                        excused("met", volts, limit("many", Bound.AT_MOST, "30 V"), entry),
                        excused("near", volts, limit("enough", Bound.AT_MOST, "12 V"), entry),
                        excused("over", volts, limit("few", Bound.AT_MOST, "3 V"), entry),
                        excused(
                                "absent",
                                Absent.unrecorded("readings.more", "more", "V"),
                                limit("few", Bound.AT_MOST, "3 V"),
                                entry))));
        assertEquals("met", verdict(opened, "Lifting", "Is there any?", "met"));
        assertEquals("undecided", verdict(opened, "Lifting", "Is there any?", "near"));
        assertEquals("not applicable", verdict(opened, "Lifting", "Is there any?", "absent"));
        assertEquals("not met", verdict(opened, "Lifting", "Is there any?", "over"));
    }

    private static Examination.Row excused(String subject, Term result, Limit limit, NotApplicable entry) {
        return new Examination.Row(
                "asked/" + subject, row(subject, result, limit).finding(), Optional.of(entry));
    }

    @Test
    void aReadingMadeUnfitForItsFormulaGivesNoFigure() {
        Term one = known("readings.one", "3 kg", 0);
        Term other = known("readings.other", "4 kg", 0);
        Working ratio = Working.fill(RATIO).put("a", one).put("b", other).work();
        Opened opened = written(new Examination(
                new Asked(Trade.WEIGHT, "How many?"), List.of(row("it", ratio, limit("many", Bound.AT_MOST, "9")))));
        int at = opened.row("Weight", "How many?", 0, "it");
        opened.cell(ReadingsSheet.NAME, opened.row(ReadingsSheet.NAME, "", 1, "readings.one"), ReadingsSheet.NUMBER)
                .setCellValue(-3);
        opened.book().getCreationHelper().createFormulaEvaluator().evaluateAll();
        Working rerun = Working.fill(RATIO)
                .put("a", known("readings.one", "-3 kg", 0))
                .put("b", other)
                .work();
        assertTrue(rerun.amount().isEmpty());
        assertEquals(Pen.NOTHING, opened.cell("Weight", at, TradeSheet.RESULT).getStringCellValue());
        assertEquals("no evidence", verdict(opened, "Weight", "How many?", "it"));
    }

    @Test
    void aFigureExactlyAtItsLimitIsJudgedAsTheProgramDoes() {
        Known exact = Known.exact("readings.mass", "mass", Quantity.of("0.3 kg"), Basis.STATED, "by hand");
        Working tenths = Working.fill(LARGER).put("a", exact).put("b", exact).work();
        Opened opened = written(new Examination(
                new Asked(Trade.RECORDS, "Equal?"),
                List.of(
                        row("at most", tenths, limit("a", Bound.AT_MOST, "300 g")),
                        row("below", tenths, limit("b", Bound.BELOW, "300 g")),
                        row("at least", tenths, limit("c", Bound.AT_LEAST, "300 g")),
                        row("above", tenths, limit("d", Bound.ABOVE, "300 g")))));
        assertEquals("met", verdict(opened, "Records", "Equal?", "at most"));
        assertEquals("not met", verdict(opened, "Records", "Equal?", "below"));
        assertEquals("met", verdict(opened, "Records", "Equal?", "at least"));
        assertEquals("not met", verdict(opened, "Records", "Equal?", "above"));
    }
}
