package kerbfolio;

import static org.junit.jupiter.api.Assertions.assertEquals;

import kerbfolio.checks.weight.CrossWeight;
import kerbfolio.checks.weight.FrontShare;
import org.junit.jupiter.api.Test;

/**
 * Four pads set against one reference share its error, as ten resistors set against one standard do in JCGM 100:2008,
 * 5.2.2: in a sum it adds up linearly, in a share and in a difference it cancels. (The example's figures are from memory: ten
 * of 1 kΩ, each within 0.1 Ω, are together within 1 Ω and not within 0.32 Ω.)
 */
class SharedReferenceTest {
    /** The example on scales: four wheels of 100 kg, read without error of their own on a reference of ± 0.1 % . */
    private static JobText fourPads(String pads) {
        return JobText.onFourCorners()
                .corners("as-received", 80, 80, 80, 80)
                .corners("as-delivered", 100, 100, 100, 100)
                .without("instruments")
                .add("instruments", "{ id: reference, of-reading: 0.1 % }")
                .add("instruments", "{ id: pads, fixed: 0.000001 kg" + pads + " }");
    }

    private static final String ON_THE_REFERENCE = ", calibrated-with: reference";

    /** By hand, u of one wheel = 0.1/√3 kg: four add up to 0.4/√3, and U = 2u. */
    @Test
    void aSharedErrorAddsUpInTheWhole() {
        assertEquals(
                2 * 0.4 / Math.sqrt(3),
                Found.reach(fourPads(ON_THE_REFERENCE).car().delivered().total()),
                1e-9);
    }

    /** The same error by each pad on its own would only add in quadrature: 0.2/√3. */
    @Test
    void errorsOfEachReadingAddInQuadrature() {
        var alone = fourPads("").without("instruments").add("instruments", "{ id: pads, fixed: 0.1 kg }");
        assertEquals(2 * 0.2 / Math.sqrt(3), Found.reach(alone.car().delivered().total()), 1e-9);
    }

    @Test
    void aShareKnowsNothingOfASharedError() {
        var job = fourPads(ON_THE_REFERENCE);
        assertEquals(0, job.found(new FrontShare(), "as delivered").reach(), 1e-6);
        assertEquals(
                0,
                job.found(new CrossWeight(), "right front and left rear, as delivered")
                        .reach(),
                1e-6);
    }

    /** By hand: 0.1 % of the 80 kg gained, not of the 720 kg weighed. */
    @Test
    void beforeAndAfterOnTheSameReferenceOnlyTheGainIsDoubtful() {
        assertEquals(
                2 * 0.08 / Math.sqrt(3),
                Found.reach(fourPads(ON_THE_REFERENCE).car().change()),
                1e-9);
    }

    /** The pads' own gain is shared in the same way, and the reference behind them adds to it in quadrature. */
    @Test
    void padsAndTheirReferenceAreTwoCauses() {
        assertEquals(
                2 * Math.hypot(0.4, 0.8) / Math.sqrt(3),
                Found.reach(fourPads(", of-reading: 0.2 %" + ON_THE_REFERENCE)
                        .car()
                        .delivered()
                        .total()),
                1e-9);
    }
}
