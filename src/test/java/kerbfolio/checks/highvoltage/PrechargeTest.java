package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/**
 * A pre-charge of 47 Ω into 1000 µF, as a maker's calculator page gives it: time constant 47.0 ms, 95 % at three of them
 * (141.0 ms), 99 % at 4.605 (216.4 ms). At least 90 % by the Formula SAE rules of 2014, EV4.12.1, which are reached at
 * 47 ms · ln 10 = 108.22 ms (by hand).
 */
class PrechargeTest {
    private static final String BY_TIME = "by the time set";

    private static JobText job(String time, String byVoltage) {
        return OneCapacitor.of("8 V", "1000 µF", "10 kΩ")
                .alter("parts", "precharge-resistor", "resistance: 100 Ω", "resistance: 47 Ω")
                .with(
                        "pack.precharge",
                        "{ from: monitor settings, resistor: precharge-resistor, time: " + time + byVoltage + " }");
    }

    private static Found reached(String time) {
        return job(time, "").found(new Precharge(), BY_TIME);
    }

    @Test
    void aBusFillsAsAMakersPageSays() {
        assertEquals(95, reached("141.0 ms").value(), 0.05);
        assertEquals(99, reached("216.4 ms").value(), 0.005);
    }

    @Test
    void nineTenthsAreEnough() {
        assertEquals(Verdict.MET, reached("108.3 ms").verdict());
        assertEquals(Verdict.NOT_MET, reached("108.1 ms").verdict());
    }

    @Test
    void aTimeKnownRoughlyIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, reached("108 ms ± 10 ms").verdict());
    }

    @Test
    void aContactorThatWaitsForTheVoltageIsSaidToWait() {
        var found = job("216.4 ms", ", by-voltage: yes")
                .found(new Precharge(), "by the time set; the bus voltage closes the contactor");
        assertTrue(found.finding().result().name().contains("waits for the voltage"));
    }

    @Test
    void whatIsNotRecordedIsNoEvidence() {
        var none = JobText.onTwoAxles().found(new Precharge());
        assertEquals(Verdict.NO_EVIDENCE, none.verdict());
        assertEquals(List.of("pack.precharge.time", "pack.precharge.resistor"), none.missing());
        var loose = job("200 ms", "").drop("links", "b7").found(new Precharge(), BY_TIME);
        assertEquals(List.of("links"), loose.missing());
    }

    @Test
    void aBusWithoutCapacitanceIsNotFilled() {
        var found = OneCapacitor.of("8 V", "0 µF", "10 kΩ").found(new Precharge());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("needs C > 0"), found.why());
    }
}
