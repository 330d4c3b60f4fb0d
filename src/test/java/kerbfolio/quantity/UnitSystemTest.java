package kerbfolio.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which unit a workshop of either system reads: common practice, no source. */
class UnitSystemTest {
    @ParameterizedTest
    @CsvSource({
        "kg, lb",
        "mm, in",
        "m, ft",
        "km/h, mph",
        "N·m, lbf·ft",
        "N/mm, lbf/in",
        "L, gal",
        "bar, psi",
        "°C, °F",
        "kW, hp"
    })
    void eachSystemHasItsOwnUnit(String si, String us) {
        assertEquals(Unit.of(us), UnitSystem.US.of(Unit.of(si)));
        assertEquals(Unit.of(si), UnitSystem.SI.of(Unit.of(us)));
        assertEquals(Optional.of(Unit.of(us)), UnitSystem.SI.otherThan(Unit.of(si)));
        assertEquals(Optional.of(Unit.of(si)), UnitSystem.US.otherThan(Unit.of(si)));
        assertTrue(Unit.of(si).measuresLike(Unit.of(us)));
    }

    @Test
    void whatBothSystemsShareStandsOnce() {
        for (UnitSystem system : UnitSystem.values()) {
            assertEquals(Unit.of("V"), system.of(Unit.of("V")));
            assertEquals(Optional.empty(), system.otherThan(Unit.of("%")));
        }
    }
}
