package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import org.junit.jupiter.api.Test;

/** Duties and currents as the manual of a pilot test adapter lists them (IEC 61851-1, Annex A; SAE J1772). */
class PilotSignalTest {
    private static final Map<String, Double> LISTED = Map.ofEntries(
            Map.entry("8 %", 6.0),
            Map.entry("10 %", 6.0),
            Map.entry("16 %", 9.6),
            Map.entry("25 %", 15.0),
            Map.entry("40 %", 24.0),
            Map.entry("50 %", 30.0),
            Map.entry("66 %", 39.6),
            Map.entry("80 %", 48.0),
            Map.entry("85 %", 51.0),
            Map.entry("86 %", 55.0),
            Map.entry("90 %", 65.0),
            Map.entry("96 %", 80.0),
            Map.entry("97 %", 80.0));

    /** A duty within some limits of error. */
    private static Term current(String duty, double expanded) {
        Quantity quantity = Quantity.of(duty);
        return PilotSignal.current(
                JobText.blank().car().evidence(),
                new Known(
                        "readings.charge.duty",
                        "duty",
                        quantity,
                        new Amount(quantity.si(), Map.of("meter", expanded / 100 / 2)),
                        Basis.MEASURED,
                        "meter",
                        List.of()));
    }

    @Test
    void aDutySaysACurrent() {
        LISTED.forEach((duty, amperes) -> assertEquals(amperes, Found.value(current(duty, 0)), 1e-9, duty));
    }

    /** By hand from 2.5·(d - 64): 52.5 A just above the jump. */
    @Test
    void theLawJumpsAboveEightyFive() {
        assertEquals(52.5, Found.value(current("85.0001 %", 0)), 0.001);
    }

    @Test
    void otherDutiesSayNone() {
        Map.of(
                        "0 %", "no charge",
                        "2.9 %", "no charge",
                        "3 %", "nothing the standard defines",
                        "5 %", "digital communication",
                        "6 %", "nothing the standard defines",
                        "7.5 %", "no charge",
                        "97.1 %", "no charge",
                        "100 %", "no charge")
                .forEach((duty, says) -> {
                    Term current = current(duty, 0);
                    assertTrue(current.amount().isEmpty(), duty);
                    assertTrue(current.origin().contains(says), duty + ": " + current.origin());
                });
    }

    @Test
    void aDutyThatMayLieBeyondAJumpIsNotDecided() {
        for (String duty : List.of("84.9 %", "85.1 %", "8.1 %", "97 %", "7.9 %")) {
            Term current = current(duty, 0.2);
            assertTrue(current.amount().isEmpty(), duty);
            assertTrue(current.origin().contains("both sides of"), duty + ": " + current.origin());
        }
    }

    /** At 10 and at 96 % one law goes on into the next; a supply of 6 or of 80 A sits just there. */
    @Test
    void whereTheLawsJoinADutyIsDecided() {
        assertEquals(6.0, Found.value(current("10 %", 0.2)), 1e-9);
        assertEquals(0.12, Found.reach(current("10 %", 0.2)), 1e-9);
        assertEquals(80.0, Found.value(current("96 %", 0.2)), 1e-9);
    }

    @Test
    void aTableNobodyConfirmedIsSaid() {
        assertEquals(
                List.of("table pilot-current is not confirmed against the document"),
                current("50 %", 0).reservations());
    }
}
