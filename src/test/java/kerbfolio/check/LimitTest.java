package kerbfolio.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.source.Citation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A verdict is decided only if the whole expanded uncertainty, k = 2, lies on one side of the limit (ILAC-G8:09/2019, 4). */
class LimitTest {
    private static final Citation BOOK = new Citation("a book", "1");

    private static Limit limit(Bound bound, String value, Standing standing) {
        return new Limit("set", "key", "greatest mass", bound, Quantity.of(value), BOOK, standing);
    }

    private static Term term(double kilograms, double expanded, String... reservations) {
        return new Known(
                "here",
                "mass",
                Quantity.of(kilograms + " kg"),
                new Amount(kilograms, Map.of("scales", expanded / 2)),
                Basis.MEASURED,
                "scales",
                List.of(reservations));
    }

    @ParameterizedTest
    @CsvSource({
        // exactly at the limit, without doubt
        "AT_MOST,  100,     0, MET",
        "BELOW,    100,     0, NOT_MET",
        "AT_LEAST, 100,     0, MET",
        "ABOVE,    100,     0, NOT_MET",
        // just inside and just outside, without doubt
        "AT_MOST,  99.999,  0, MET",
        "AT_MOST,  100.001, 0, NOT_MET",
        "BELOW,    99.999,  0, MET",
        "AT_LEAST, 100.001, 0, MET",
        "AT_LEAST, 99.999,  0, NOT_MET",
        "ABOVE,    100.001, 0, MET",
        // exactly at the limit, in doubt
        "AT_MOST,  100,     1, UNDECIDED",
        "BELOW,    100,     1, UNDECIDED",
        "AT_LEAST, 100,     1, UNDECIDED",
        "ABOVE,    100,     1, UNDECIDED",
        // the whole doubt inside, its edge on the limit
        "AT_MOST,  99,      1, MET",
        "BELOW,    99,      1, UNDECIDED",
        "AT_LEAST, 101,     1, MET",
        "ABOVE,    101,     1, UNDECIDED",
        "AT_MOST,  99.001,  1, UNDECIDED",
        "BELOW,    98.999,  1, MET",
        "AT_LEAST, 100.999, 1, UNDECIDED",
        "ABOVE,    101.001, 1, MET",
        // the whole doubt outside, its edge on the limit
        "AT_MOST,  101,     1, UNDECIDED",
        "BELOW,    101,     1, NOT_MET",
        "AT_LEAST, 99,      1, UNDECIDED",
        "ABOVE,    99,      1, NOT_MET",
        "AT_MOST,  101.001, 1, NOT_MET",
        "BELOW,    100.999, 1, UNDECIDED",
        "AT_LEAST, 98.999,  1, NOT_MET",
        "ABOVE,    99.001,  1, UNDECIDED"
    })
    void aFigureIsJudgedWithItsWholeDoubt(Bound bound, double value, double expanded, Verdict verdict) {
        assertEquals(verdict, limit(bound, "100 kg", Standing.OWN_RULE).judge(term(value, expanded)));
    }

    @Test
    void whatIsMissingIsNoEvidence() {
        assertEquals(
                Verdict.NO_EVIDENCE,
                limit(Bound.AT_MOST, "100 kg", Standing.OWN_RULE).judge(Absent.unrecorded("here", "mass", "kg")));
    }

    @Test
    void aMetFigureThatLeansOnSomethingWeakIsUnconfirmed() {
        var limit = limit(Bound.AT_MOST, "100 kg", Standing.OWN_RULE);
        Term weak = term(90, 1, "scales were out of calibration");
        assertEquals(Verdict.MET_UNCONFIRMED, limit.judge(weak));
        assertEquals(List.of("scales were out of calibration"), limit.reservations(weak));
    }

    @Test
    void aMetFigureAgainstAnUnconfirmedLimitIsUnconfirmed() {
        var limit = limit(Bound.AT_MOST, "100 kg", Standing.UNCONFIRMED);
        assertEquals(Verdict.MET_UNCONFIRMED, limit.judge(term(90, 1)));
        assertEquals(List.of("limit not confirmed: greatest mass (set, 1)"), limit.reservations(term(90, 1)));
    }

    @Test
    void whatIsWeakStillHolds() {
        var limit = limit(Bound.AT_MOST, "100 kg", Standing.UNCONFIRMED);
        assertEquals(Verdict.NOT_MET, limit.judge(term(110, 1, "scales were out of calibration")));
        assertEquals(Verdict.UNDECIDED, limit.judge(term(100, 1, "scales were out of calibration")));
    }

    @Test
    void aLimitIsATermWithItsClause() {
        var limit = limit(Bound.AT_MOST, "100 lb", Standing.UNCONFIRMED);
        assertEquals(45.359237, limit.amount().orElseThrow().si(), 1e-12);
        assertEquals(0, limit.amount().orElseThrow().expanded());
        assertEquals("lb", limit.unit().text());
        assertEquals(Basis.REQUIRED, limit.basis());
        assertEquals("a book, 1 (unconfirmed)", limit.origin());
        assertEquals("greatest mass", limit.name());
        assertTrue(limit.missing().isEmpty());
    }

    private static Working sum(String text, String... figures) {
        var builder = Formula.of(text).giving("sum", "kg");
        for (int i = 0; i < figures.length; i++) {
            builder.with("x_" + i, "figure", "kg");
        }
        var filling = Working.fill(builder.from(BOOK).build());
        for (int i = 0; i < figures.length; i++) {
            filling.put("x_" + i, Known.exact("", "figure", Quantity.of(figures[i]), Basis.STATED, "book"));
        }
        return filling.work();
    }

    /** 0.1 + 0.2 is not 0.3 in binary, and 300.3 − 100.1 − 200.2 is not 0. */
    @Test
    void theDustOfBinaryArithmeticDecidesNothing() {
        Working more = sum("s = x_0 + x_1", "0.1 kg", "0.2 kg");
        assertTrue(more.amount().orElseThrow().si() > 0.3, "dust");
        assertEquals(
                Verdict.MET, limit(Bound.AT_MOST, "0.3 kg", Standing.OWN_RULE).judge(more));
        assertEquals(
                Verdict.NOT_MET, limit(Bound.ABOVE, "0.3 kg", Standing.OWN_RULE).judge(more));
        Working less = sum("s = x_0 - x_1 - x_2", "300.3 kg", "100.1 kg", "200.2 kg");
        assertTrue(less.amount().orElseThrow().si() != 0, "dust");
        assertEquals(
                Verdict.MET, limit(Bound.AT_LEAST, "0 kg", Standing.OWN_RULE).judge(less));
        assertEquals(
                Verdict.MET, limit(Bound.AT_MOST, "0 kg", Standing.OWN_RULE).judge(less));
        assertEquals(
                Verdict.NOT_MET, limit(Bound.BELOW, "0 kg", Standing.OWN_RULE).judge(less));
    }

    @Test
    void whatIsMoreThanDustDecides() {
        Working over = sum("s = x_0 - x_1", "300.0000001 kg", "300 kg");
        assertEquals(
                Verdict.NOT_MET, limit(Bound.AT_MOST, "0 kg", Standing.OWN_RULE).judge(over));
    }

    /** Where a small move of a reading changes the law itself, half the difference says nothing of the doubt. */
    @Test
    void aFigureOnAKinkOfItsLawIsUndecided() {
        Formula greater = Formula.of("g = max(x_0, x_1)")
                .giving("greater", "kg")
                .with("x_0", "figure", "kg")
                .with("x_1", "figure", "kg")
                .from(BOOK)
                .build();
        var limit = limit(Bound.AT_MOST, "100 kg", Standing.OWN_RULE);
        Working kink = Working.fill(greater)
                .put("x_0", term(50, 1))
                .put("x_1", term(50, 0))
                .work();
        Working clear = Working.fill(greater)
                .put("x_0", term(60, 1))
                .put("x_1", term(50, 0))
                .work();
        assertEquals(Verdict.UNDECIDED, limit.judge(kink));
        assertEquals(Verdict.MET, limit.judge(clear));
    }
}
