package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** Speeds of the symbols: UN R30, section 2, as three public tables give them. */
class TyreSpeedTest {
    private final JobText job = JobText.onTwoAxles();

    private Found front(String symbol, String speed) {
        return job.with("vehicle.tyres.front", "{ speed-symbol: " + symbol + " }")
                .with("vehicle.top-speed", speed)
                .found(new TyreSpeed(), "front axle");
    }

    @Test
    void aTyreFasterThanTheCarIsMet() {
        assertEquals(60, front("S", "120 km/h").value(), 1e-9);
        assertEquals(Verdict.MET, front("S", "120 km/h").verdict());
    }

    @Test
    void aTyreAsFastAsTheCarIsMet() {
        assertEquals(Verdict.MET, front("S", "180 km/h").verdict());
    }

    @Test
    void aTyreSlowerThanTheCarIsNotMet() {
        assertEquals(Verdict.NOT_MET, front("S", "181 km/h").verdict());
    }

    @Test
    void aTopSpeedKnownRoughlyIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, front("S", "178 km/h ± 5 km/h").verdict());
    }

    @Test
    void lettersAreNotInTheOrderOfTheAlphabet() {
        assertEquals(200, front("U", "0 km/h").value(), 1e-9);
        assertEquals(210, front("H", "0 km/h").value(), 1e-9);
        assertEquals(240, front("V", "0 km/h").value(), 1e-9);
    }

    @Test
    void aSymbolNobodyReadIsNoEvidence() {
        var found = job.without("vehicle.tyres.front").found(new TyreSpeed(), "front axle");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("vehicle.tyres.front.speed-symbol"), found.missing());
    }

    @Test
    void aTopSpeedNobodyStatedIsNoEvidence() {
        var found = job.without("vehicle.top-speed").found(new TyreSpeed(), "front axle");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("vehicle.top-speed"), found.missing());
    }

    @Test
    void aSymbolWithNoSingleSpeedIsNoEvidence() {
        var found = front("ZR", "120 km/h");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("`ZR` is not in table"), found.why());
    }

    @Test
    void aTableNobodyConfirmedMayHoldButNotClear() {
        job.without("confirmations").confirming("un-ece", "tyre-speed");
        assertEquals(Verdict.MET_UNCONFIRMED, front("S", "120 km/h").verdict());
        assertEquals(Verdict.NOT_MET, front("S", "190 km/h").verdict());
    }
}
