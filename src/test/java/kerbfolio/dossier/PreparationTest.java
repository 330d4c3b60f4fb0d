package kerbfolio.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import kerbfolio.dossier.Preparation.Answer;
import kerbfolio.dossier.Preparation.Group;
import kerbfolio.dossier.Preparation.Question;
import kerbfolio.dossier.Preparation.Requirement;
import org.junit.jupiter.api.Test;

class PreparationTest {
    private static Preparation preparation(JobText job) {
        return job.dossier().inspection().preparation();
    }

    @Test
    void aQuestionWithAnAnswerNotMetStandsFirstAndWhatIsMissingNext() {
        List<Requirement> requirements = preparation(JobText.onTwoAxles()
                        .with("vehicle.ratings.front-axle", "800 kg")
                        .without("vehicle.tyres.rear"))
                .requirements();
        List<String> checks = requirements.stream().map(Requirement::check).toList();
        assertEquals("axle-margin", checks.get(0));
        assertTrue(checks.indexOf("axle-margin") < checks.indexOf("tyre-load"), checks.toString());
        assertTrue(checks.indexOf("tyre-load") < checks.indexOf("gross-margin"), checks.toString());
        Requirement first = requirements.get(0);
        assertEquals("inspection", first.gate());
        assertEquals("Is each axle as delivered within its permitted mass?", first.question());
        assertEquals(
                List.of(
                        new Answer("axle-margin/front-axle-as-delivered", "front axle, as delivered", Verdict.NOT_MET),
                        new Answer("axle-margin/rear-axle-as-delivered", "rear axle, as delivered", Verdict.MET)),
                first.answers());
        assertEquals(1, first.limits().size());
        assertTrue(first.limits().get(0).contains("1230/2012"), first.limits().toString());
    }

    @Test
    void aQuestionSeveralGatesAskStandsOnceWithItsAnswersByVerdict() {
        Preparation preparation = preparation(TractionText.sound()
                .with("job.tier", "inspection")
                .alter("parts", "charger", "protection: IP67", "protection: IP00"));
        List<Question> touch = preparation.questions().stream()
                .filter(question -> question.check().equals("touch-protection"))
                .toList();
        assertEquals(1, touch.size());
        assertEquals("transport, energise", touch.get(0).gates());
        assertEquals(
                new Group(Verdict.NOT_MET, "charger, closed"),
                touch.get(0).groups().get(0));
        assertEquals(2, touch.get(0).groups().size());
    }

    @Test
    void whatThisVersionDoesNotExamineIsSaidByGate() {
        List<String> lines =
                preparation(JobText.blank().with("job.tier", "first")).unexamined();
        assertTrue(lines.contains("energise: function tests, low voltage"), lines.toString());
        assertTrue(lines.contains("inspection: brakes, records"), lines.toString());
    }
}
