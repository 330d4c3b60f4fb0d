package kerbfolio.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import org.junit.jupiter.api.Test;

class WeighingLineTest {
    private static List<WeighingLine> weighings(JobText job) {
        return job.dossier().inspection().weighings();
    }

    @Test
    void aWeighingSaysWhenWithWhatByWhomAndWhatWasAboard() {
        var job = JobText.onTwoAxles()
                .with("weighings.as-delivered.by", "B. Reader")
                .with("weighings.as-delivered.ticket", "\"0071\"")
                .with("weighings.as-delivered.state", "{ fuel: none, occupants: \"0\", ballast: 0 kg, note: wet }");
        assertEquals(
                new WeighingLine(
                        "as delivered",
                        "2026-09-30",
                        "axle scales 7",
                        "B. Reader",
                        "0071",
                        "fuel none; occupants 0; ballast 0 kg; wet"),
                weighings(job).get(1));
    }

    @Test
    void publishedMassesSayWhoPublishedThem() {
        var job = JobText.onTwoAxles()
                .without("weighings.as-received.instrument")
                .without("weighings.as-received.state")
                .with("weighings.as-received.stated-by", "handbook");
        assertEquals(
                new WeighingLine("as received", "2026-08-01", "handbook", "\u2014", "\u2014", "\u2014"),
                weighings(job).get(0));
    }

    @Test
    void aTiltWeighingStandsWithTheOthers() {
        var job =
                JobText.onTwoAxles().with("weighings.tilt", "{ date: 2026-09-30, instrument: pads, note: doors shut }");
        assertEquals(
                new WeighingLine("rear axle raised", "2026-09-30", "axle scales 7", "\u2014", "\u2014", "doors shut"),
                weighings(job).get(2));
        assertEquals(List.of(), weighings(JobText.blank()));
    }
}
