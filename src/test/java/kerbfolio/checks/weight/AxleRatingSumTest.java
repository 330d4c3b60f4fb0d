package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** The sum of the permitted axle masses is at least the permitted gross mass, and need not equal it. */
class AxleRatingSumTest {
    private static JobText plate(String front, String rear, String gross) {
        return JobText.onTwoAxles()
                .with("vehicle.ratings.front-axle", front)
                .with("vehicle.ratings.rear-axle", rear)
                .with("vehicle.ratings.gross", gross);
    }

    private static Found found(String front, String rear, String gross) {
        return plate(front, rear, gross).found(new AxleRatingSum());
    }

    @Test
    void axlesThatCarryMoreThanTheWholeAreMet() {
        assertEquals(50, found("850 kg", "900 kg", "1700 kg").value(), 1e-9);
        assertEquals(Verdict.MET, found("850 kg", "900 kg", "1700 kg").verdict());
    }

    @Test
    void axlesThatCarryLessThanTheWholeAreNotMet() {
        assertEquals(Verdict.NOT_MET, found("850 kg", "900 kg", "1751 kg").verdict());
    }

    /** On many plates the two are equal; the pound is no round number in SI and may not decide. */
    @Test
    void axlesThatCarryExactlyTheWholeAreMetInAnyUnit() {
        for (int front = 1501; front < 2500; front += 7) {
            for (String unit : List.of("kg", "lb")) {
                String gross = front + 2153 + " " + unit;
                assertEquals(
                        Verdict.MET,
                        found(front + " " + unit, "2153 " + unit, gross).verdict(),
                        gross);
            }
        }
        assertEquals(Verdict.MET, found("640.1 kg", "539.9 kg", "1180 kg").verdict());
    }

    @Test
    void axlesStatedWithAnErrorAreTooCloseToTell() {
        assertEquals(
                Verdict.UNDECIDED, found("850 kg ± 5 kg", "850 kg", "1700 kg").verdict());
    }

    @Test
    void aRatingNobodyReadIsNoEvidence() {
        var found = JobText.onTwoAxles().without("vehicle.ratings.rear-axle").found(new AxleRatingSum());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("vehicle.ratings.rear-axle"), found.missing());
    }
}
