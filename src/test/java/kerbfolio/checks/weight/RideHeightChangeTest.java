package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

class RideHeightChangeTest {
    private static JobText heights(String rear) {
        return JobText.onTwoAxles().with("vehicle.ride-height.rear", rear);
    }

    /** By hand: two readings of one tape of ± 1 mm each make U = 2·√(2/3) = 1.633 mm. */
    @Test
    void aLowerBodyIsANegativeChange() {
        var found = heights("{ instrument: tape, before: 655 mm, after: 638 mm }")
                .found(new RideHeightChange(), "rear axle");
        assertEquals(-17, found.value(), 1e-9);
        assertEquals(1.633, found.reach(), 0.0005);
        assertEquals("mm", found.unit());
        assertEquals(Verdict.NO_LIMIT, found.verdict());
    }

    @Test
    void aHeightNobodyTookBeforeGivesNoChange() {
        var found = heights("{ instrument: tape, after: 638 mm }").found(new RideHeightChange(), "rear axle");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("vehicle.ride-height.rear.before"), found.missing());
    }

    @Test
    void aHeightReadWithNothingGivesNoChange() {
        var found = heights("{ before: 655 mm, after: 638 mm }").found(new RideHeightChange(), "rear axle");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
    }
}
