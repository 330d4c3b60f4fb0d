package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** Half the mean track over the height of the centre of gravity (NHTSA HS 809 868); tracks 1400 and 1440 mm. */
class StaticStabilityTest {
    /** A car of 1600 kg, 2500 mm, equal radii of 300 mm, 500 mm raised, whose front axle then weighs so much. */
    private static Found raised(String frontAxle) {
        return raised("± 0.1 kg", frontAxle);
    }

    private static Found raised(String error, String frontAxle) {
        return JobText.onTwoAxles()
                .with("weighings.as-delivered.axles", "{ front: 814 kg " + error + ", rear: 786 kg " + error + " }")
                .with("weighings.tilt.instrument", "pads")
                .with("weighings.tilt.date", "2026-09-30")
                .with("weighings.tilt.length-instrument", "tape")
                .with("weighings.tilt.loaded-radius", "{ front: 300 mm, rear: 300 mm }")
                .with("weighings.tilt.steps", "[{ rise: 500 mm, front-axle: " + frontAxle + " " + error + " }]")
                .found(new StaticStability());
    }

    /**
     * By hand: tan θ = 500/√(2500² − 500²) = 0.204124; h = 300 + 2500·31.35/(1600·0.204124) = 539.97 mm; S = 710/539.97 =
     * 1.3149.
     */
    @Test
    void theFactorIsHalfTheTrackOverTheHeight() {
        assertEquals(1.3149, raised("845.35 kg").value(), 0.00005);
        assertEquals(Verdict.MET, raised("845.35 kg").verdict());
    }

    /** By hand: h = 300 + 2500·52.35/(1600·0.204124) = 700.72 mm; S = 1.0132, below 1.12 of the full-size vans. */
    @Test
    void aFactorBelowEveryClassIsNotMet() {
        assertEquals(1.0132, raised("866.35 kg").value(), 0.00005);
        assertEquals(Verdict.NOT_MET, raised("866.35 kg").verdict());
    }

    @Test
    void aFactorRoughlyKnownIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, raised("± 2 kg", "857 kg").verdict());
    }

    @Test
    void aHeightNobodyMeasuredIsNoEvidence() {
        assertEquals(
                Verdict.NO_EVIDENCE,
                JobText.onTwoAxles().found(new StaticStability()).verdict());
    }

    @Test
    void aPlausibilityFigureHoldsNoGate() {
        assertEquals(Optional.empty(), new StaticStability().gate());
    }
}
