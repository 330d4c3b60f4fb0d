package kerbfolio.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kerbfolio.check.Check;
import kerbfolio.check.Trade;
import kerbfolio.job.Gate;
import org.junit.jupiter.api.Test;

class CheckListTest {
    /** What an inspector is shown of a car's weight: margins, tyres, the ledger and the sheet; the rest is printed only. */
    private static final Set<String> HOLD_INSPECTION = Set.of(
            "gross-margin",
            "axle-margin",
            "seated-gross-margin",
            "laden-gross-margin",
            "laden-axle-margin",
            "axle-rating-sum",
            "tyre-load",
            "laden-tyre-load",
            "tyre-speed",
            "ledger-closure",
            "stated-mass");

    @Test
    void whatAWeightCheckHoldsIsTheInspectionOrNothing() {
        List<Check> weight = CheckList.ALL.stream()
                .filter(check -> check.trade() == Trade.WEIGHT)
                .toList();
        assertEquals(
                HOLD_INSPECTION,
                weight.stream()
                        .filter(check -> check.gate().equals(Optional.of(Gate.INSPECTION)))
                        .map(Check::id)
                        .collect(Collectors.toSet()));
        for (Check check : weight) {
            assertTrue(check.gate().isEmpty() || HOLD_INSPECTION.contains(check.id()), check.id());
        }
    }

    @Test
    void everyQuestionIsAQuestionOfItsOwn() {
        List<String> questions = CheckList.ALL.stream().map(Check::question).toList();
        assertEquals(questions.stream().distinct().toList(), questions);
        for (String question : questions) {
            assertTrue(question.matches("[A-Z].*\\?"), question);
        }
    }

    @Test
    void checksStandInTheOrderOfTheTrades() {
        List<Trade> trades = CheckList.ALL.stream().map(Check::trade).toList();
        assertEquals(trades.stream().sorted().toList(), trades);
    }
}
