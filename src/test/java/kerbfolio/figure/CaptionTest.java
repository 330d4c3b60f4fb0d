package kerbfolio.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerbfolio.JobText;
import org.junit.jupiter.api.Test;

/** Masses are those written in the job; ± of a scale of ± 1 kg is 2 · 1/√3 = 1.2 kg, of a difference or sum √2 times that, always rounded up. */
class CaptionTest {
    private static String caption(JobText job, String id) {
        return Drawn.figure(job.dossier(), id).caption().replace('\u00a0', ' ');
    }

    private static String alternative(JobText job, String id) {
        return Drawn.figure(job.dossier(), id).alternative().replace('\u00a0', ' ');
    }

    /** 786 - 650 and 814 - 750. */
    @Test
    void whatEachAxleGainedIsSaid() {
        assertEquals(
                "The rear axle gained 136.0 ± 1.7 kg, the front axle gained 64.0 ± 1.7 kg.",
                caption(JobText.onTwoAxles(), "corner-weights"));
    }

    @Test
    void whatAnAxleLostIsSaidWithoutASign() {
        String caption =
                caption(JobText.onTwoAxles().with("weighings.as-delivered.axles.rear", "600 kg"), "corner-weights");
        assertTrue(caption.startsWith("The rear axle lost 50.0 ± 1.7 kg, "), caption);
    }

    @Test
    void aChangeWithinItsUncertaintyIsNone() {
        String caption =
                caption(JobText.onTwoAxles().with("weighings.as-delivered.axles.rear", "651 kg"), "corner-weights");
        assertTrue(caption.startsWith("The rear axle did not change beyond its uncertainty (+1.0 ± 1.7 kg)"), caption);
    }

    /** 398 - 340 is the most of 20, 44, 58, 78: the right rear gained 388 - 310. */
    @Test
    void theWheelThatChangedMostIsNamed() {
        String caption = caption(JobText.onFourCorners(), "corner-weights");
        assertTrue(caption.endsWith("Most changed: the right rear wheel, +78.0 ± 1.7 kg."), caption);
    }

    @Test
    void massesNobodyWeighedAreSaidToBeStated() {
        String caption = caption(
                JobText.onTwoAxles()
                        .without("weighings.as-received")
                        .with("weighings.as-received.stated-by", "handbook")
                        .with("weighings.as-received.axles", "{ front: 750 kg, rear: 650 kg }"),
                "corner-weights");
        assertTrue(caption.endsWith("The masses as received are stated, not weighed."), caption);
    }

    @Test
    void aSecondWeighingThatIsMissingLeavesTheFirst() {
        assertEquals(
                "The rear axle carries 786.0 ± 1.2 kg as delivered, the front axle carries 814.0 ± 1.2 kg as delivered.",
                caption(JobText.onTwoAxles().without("weighings.as-received"), "corner-weights"));
    }

    /** 650/1400 and 786/1600 of 2500 mm. */
    @Test
    void theCentreOfGravityMovesTheWayItsFiguresDo() {
        String caption = caption(JobText.onTwoAxles(), "centre-movement");
        assertTrue(caption.startsWith("The centre of gravity moved rearward: 1160.7"), caption);
        assertTrue(caption.contains(", 1228.1"), caption);
        String back = caption(
                JobText.onTwoAxles().with("weighings.as-delivered.axles", "{ front: 900 kg, rear: 700 kg }"),
                "centre-movement");
        assertTrue(back.startsWith("The centre of gravity moved forward"), back);
        String still = caption(
                JobText.onTwoAxles().with("weighings.as-delivered.axles", "{ front: 750 kg, rear: 650 kg }"),
                "centre-movement");
        assertTrue(still.startsWith("The centre of gravity stayed where it was within its uncertainty"), still);
    }

    @Test
    void whatIsOverItsRatingIsNamedAndWhatIsCloseCounted() {
        String caption = caption(
                JobText.onTwoAxles()
                        .with("vehicle.ratings.rear-axle", "700 kg")
                        .with("vehicle.ratings.front-axle", "814.5 kg"),
                "axle-margins");
        assertTrue(caption.startsWith("Not met: rear axle, as delivered (over by 86.0 ± 1.2 kg)"), caption);
        assertTrue(caption.contains("Too close to tell: 1 of "), caption);
    }

    @Test
    void smallPartsAreTakenTogetherAndTheRestStandsLargestFirst() {
        JobText job = JobText.onTwoAxles();
        for (int i = 1; i <= 17; i++) {
            job.add("parts", "{ id: p" + i + ", name: part " + i + ", mass: " + i + " kg, mass-from: maker }");
        }
        String said = alternative(job, "mass-ledger");
        assertTrue(said.contains("Fitted, largest first: part 17, 17 kg; part 16, 16 kg;"), said);
        // 1 + 2 + 3 + 4
        assertTrue(said.contains("part 5, 5 kg; 4 smaller parts, 10 kg."), said);
        assertTrue(said.endsWith("The whole car changed by +200.0 ± 2.4 kg by the scales."), said);
    }

    @Test
    void aPartWithoutAMassIsSaidToHaveNone() {
        JobText job = JobText.onTwoAxles()
                .add("parts", "{ id: a, name: box, mass: 9 kg, mass-from: maker }")
                .add("parts", "{ id: b, name: bag }");
        assertTrue(
                alternative(job, "mass-ledger")
                        .startsWith(
                                "Nothing is recorded as taken out. Fitted, largest first: box, 9 kg. Fitted, mass not known: bag."));
    }

    /** A car of which one wheel was read twice and the others once: 420 - 400 = 20. */
    private static JobText halfRead() {
        return JobText.onFourCorners()
                .without("weighings.as-received.corners.left-rear")
                .without("weighings.as-received.corners.right-rear")
                .without("weighings.as-delivered.corners.right-front")
                .add("parts", "{ id: a, name: drive unit, mass: 44 kg, mass-from: maker }")
                .add("parts", "{ id: b, name: battery }")
                .add("removed", "{ id: c, name: engine }");
    }

    /** 400 + 350 and 398 + 388. */
    @Test
    void anAxleReadOnceIsSaidWithTheDayItWasRead() {
        assertEquals(
                "The rear axle carries 786.0 ± 1.7 kg as delivered, the front axle carried 750.0 ± 1.7 kg as received.",
                caption(halfRead(), "corner-weights"));
    }

    @Test
    void whatIsNotKnownIsLeftOutOfTheWords() {
        String plan = alternative(halfRead(), "corner-weights");
        assertTrue(
                plan.startsWith("Plan of the car, front to the left. Front axle: 750.0 ± 1.7 kg as received. "
                        + "Rear axle: 786.0 ± 1.7 kg as delivered. Left front: 400.0 ± 1.2 kg as received, "
                        + "420.0 ± 1.2 kg as delivered, change +20.0 ± 1.7 kg. "
                        + "Right front: 350.0 ± 1.2 kg as received. "),
                plan);
        assertEquals(
                "Taken out, mass not known: engine. Fitted, largest first: drive unit, 44 kg. "
                        + "Fitted, mass not known: battery.",
                alternative(halfRead(), "mass-ledger"));
    }

    @Test
    void aLedgerOfOneSideSpeaksOfThatSide() {
        assertEquals(
                "Largest mass recorded among what was fitted: drive unit, 44 kg.", caption(halfRead(), "mass-ledger"));
    }

    @Test
    void aLedgerWithScalesAndPartsSpeaksOfAll() {
        String caption = caption(
                JobText.onTwoAxles()
                        .add("parts", "{ id: a, name: battery, mass: 260 kg ± 1 kg, mass-from: maker }")
                        .add("removed", "{ id: b, name: engine, mass: 60 kg ± 1 kg, mass-from: maker }"),
                "mass-ledger");
        assertTrue(
                caption.startsWith("Largest mass recorded among what was taken out: engine, 60.0 ± 1.2 kg; "
                        + "among what was fitted: battery, 260.0 ± 1.2 kg. The whole car changed by +200.0 ± 1.7 kg "
                        + "by its parts and by +200.0 ± 2.4 kg by the scales; whether they agree: "),
                caption);
    }

    @Test
    void aWheelReadAloneStillHasACaption() {
        JobText job = halfRead()
                .without("weighings.as-received.corners.right-front")
                .without("weighings.as-delivered.corners.left-rear");
        assertEquals("What stands on each wheel that was weighed.", caption(job, "corner-weights"));
    }

    @Test
    void aCentreOfStatedMassesIsSaidToBeStated() {
        JobText job = JobText.onTwoAxles()
                .without("weighings.as-received")
                .with("weighings.as-received.stated-by", "handbook")
                .with("weighings.as-received.axles", "{ front: 750 kg ± 1 kg, rear: 650 kg ± 1 kg }");
        String caption = caption(job, "centre-movement");
        assertTrue(caption.contains(" mm behind the front axle as received (stated), 1228.1"), caption);
        assertTrue(alternative(job, "centre-movement").startsWith("Centre of gravity as received (stated): 1160.7"));
    }

    @Test
    void noChangeHasNoSideAndNoSign() {
        JobText job = JobText.onTwoAxles().with("weighings.as-delivered.axles", "{ front: 750 kg, rear: 650 kg }");
        assertTrue(alternative(job, "corner-weights").contains("change 0.0 ± 1.7 kg."));
    }

    @Test
    void aChangeOfLessThanOneHasItsSign() {
        JobText job = JobText.onTwoAxles().with("weighings.as-delivered.axles.front", "750.5 kg");
        assertTrue(alternative(job, "corner-weights").contains("as delivered, change +0.5 ± 1.7 kg."));
    }
}
