package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** Axles of 814 and 786 kg, 2500 mm apart, on plates of 850 and 900 kg. */
class LadenAxleMarginTest {
    private static final String FRONT = "front axle, with the declared load";
    private static final String REAR = "rear axle, with the declared load";

    private static Found laden(String load, String subject) {
        return JobText.onTwoAxles().with("vehicle.load", load).found(new LadenAxleMargin(), subject);
    }

    /** By hand: 60 kg half way puts 30 kg on each axle. */
    @Test
    void aLoadHalfWayIsSharedByBothAxles() {
        String driver = "[{ name: driver, mass: 60 kg, position: { x: 1250 mm } }]";
        assertEquals(850 - 814 - 30, laden(driver, FRONT).value(), 1e-9);
        assertEquals(900 - 786 - 30, laden(driver, REAR).value(), 1e-9);
        assertEquals(Verdict.MET, laden(driver, FRONT).verdict());
    }

    /** By hand: 100 kg 500 mm behind the rear axle puts 120 kg on it and takes 20 kg off the front. */
    @Test
    void luggageBehindTheRearAxleLoadsItWithMoreThanItsOwnMass() {
        String luggage = "[{ name: luggage, mass: 100 kg, position: { x: 3000 mm } }]";
        assertEquals(850 - 814 + 20, laden(luggage, FRONT).value(), 1e-9);
        assertEquals(900 - 786 - 120, laden(luggage, REAR).value(), 1e-9);
        assertEquals(Verdict.NOT_MET, laden(luggage, REAR).verdict());
    }

    @Test
    void aPlaceKnownOnlyRoughlyIsTooCloseToTell() {
        // 110 kg at 2500 ± 200 mm: 8.8 kg either way, for 4 kg of margin.
        String luggage = "[{ name: luggage, mass: 110 kg, position: { x: 2500 mm ± 200 mm } }]";
        assertEquals(4, laden(luggage, REAR).value(), 1e-9);
        assertEquals(Verdict.UNDECIDED, laden(luggage, REAR).verdict());
    }

    @Test
    void aLoadWithoutAPlaceIsNoEvidence() {
        var found = laden("[{ name: driver, mass: 60 kg }]", FRONT);
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("vehicle.load[0].position.x"), found.missing());
    }
}
