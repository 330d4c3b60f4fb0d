package kerbfolio.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class BoundTest {
    @Test
    void wordAndSignSayTheSame() {
        assertEquals(
                "at most ≤, below <, at least ≥, above >",
                Arrays.stream(Bound.values()).map(b -> b + " " + b.sign()).collect(Collectors.joining(", ")));
    }
}
