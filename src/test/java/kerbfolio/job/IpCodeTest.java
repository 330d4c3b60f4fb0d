package kerbfolio.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** First numeral and additional letter of IEC 60529: 1 or A the back of a hand, 2 or B a finger, 3 or C a tool, 4 or D a wire. */
class IpCodeTest {
    @Test
    void whatIsKeptOutIsTheBetterOfNumeralAndLetter() {
        Map.of(
                        "IPXXB", 2, "IPXXD", 4, "IP67", 6, "IP2X", 2, "IP1XB", 2, "IP00", 0, "IP6K9K", 6, "IP23CS", 3,
                        "IPXXA", 1)
                .forEach((code, access) -> assertEquals(
                        OptionalInt.of(access), IpCode.of(code).orElseThrow().access(), code));
    }

    @Test
    void aCodeOfWaterAloneSaysNothingOfFingers() {
        assertEquals(OptionalInt.empty(), IpCode.of("IPX7").orElseThrow().access());
    }

    @Test
    void whatIsNoCodeIsRefused() {
        for (String text : List.of("", "IP", "IP7", "IP77", "67", "ip67", "IPXXE", "IP67 or so", "sealed")) {
            assertTrue(IpCode.of(text).isEmpty(), text);
        }
    }
}
