package kerbfolio.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class VerdictTest {
    @Test
    void onlyWhatIsDecidedAndConfirmedClears() {
        Set<Verdict> clearing =
                Arrays.stream(Verdict.values()).filter(Verdict::clears).collect(Collectors.toSet());
        assertEquals(Set.of(Verdict.MET, Verdict.NOT_APPLICABLE, Verdict.NO_LIMIT), clearing);
    }

    @Test
    void theWordsAreThoseOfTheDossier() {
        assertEquals(
                "met, met, unconfirmed, not met, undecided, no evidence, not applicable, no limit",
                Arrays.stream(Verdict.values()).map(Verdict::toString).collect(Collectors.joining(", ")));
    }
}
