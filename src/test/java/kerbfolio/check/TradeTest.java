package kerbfolio.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class TradeTest {
    @Test
    void aTradeIsNamedByItsPackage() {
        assertEquals(Trade.HIGHVOLTAGE, Trade.ofPackage("kerbfolio.checks.highvoltage"));
        assertThrows(IllegalStateException.class, () -> Trade.ofPackage("kerbfolio.checks.upholstery"));
    }

    @Test
    void onPaperItStandsInWords() {
        assertEquals("high voltage", Trade.words("highvoltage"));
        assertEquals("high voltage", Trade.HIGHVOLTAGE.toString());
        assertEquals("gross-margin", Trade.words("gross-margin"));
    }
}
