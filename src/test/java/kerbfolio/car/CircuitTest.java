package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import kerbfolio.TractionText;
import kerbfolio.job.Part;
import org.junit.jupiter.api.Test;

class CircuitTest {
    private final Car car = TractionText.sound().car();
    private final Circuit circuit = car.circuit();

    @Test
    void theVoltageOfThePackIsThatOfItsCellsInSeries() {
        assertEquals(
                22 * 4 * 4.2, car.pack().highestVoltage().amount().orElseThrow().si(), 1e-9);
        assertEquals(
                8 * 4 * 4.2,
                car.pack().boxVoltage("front-box").amount().orElseThrow().si(),
                1e-9);
    }

    @Test
    void withTheDisconnectOutTheInverterHangsOnOnePoleOfEachBox() {
        Potentials out = circuit.potentials(List.of("disconnect"), car.pack().boxVolts());
        assertEquals(
                true,
                out.between(Terminal.plus("inverter"), Terminal.minus("inverter"))
                        .isEmpty());
        assertEquals(Set.of("front-box"), out.boxes(Terminal.plus("inverter")));
        assertEquals(Set.of("rear-box"), out.boxes(Terminal.minus("inverter")));
        Potentials in = circuit.potentials(List.of(), car.pack().boxVolts());
        assertEquals(
                369.6,
                in.between(Terminal.plus("heater"), Terminal.minus("heater")).orElseThrow(),
                1e-9);
    }

    @Test
    void theLoopOfTheInverterPassesBothBoxesAndNotTheHeatersFuse() {
        Set<String> loop = circuit.loop(circuit.part("inverter").orElseThrow());
        assertEquals(
                Set.of(
                        "front-box",
                        "rear-box",
                        "front-fuse",
                        "rear-fuse",
                        "contactor-plus",
                        "contactor-minus",
                        "disconnect",
                        "b1",
                        "b2",
                        "b3",
                        "b4",
                        "c-minus",
                        "c-mid-rear",
                        "c-mid-front",
                        "c-plus",
                        "c-inverter"),
                loop);
    }

    @Test
    void everyCableIsGuardedFromTheSideOfTheBoxes() {
        assertEquals(List.of("front-fuse", "rear-fuse"), guards("c-plus"));
        assertEquals(List.of("front-fuse", "rear-fuse", "heater-fuse"), guards("c-heater-plus"));
    }

    private List<String> guards(String link) {
        return circuit.links().stream()
                .filter(l -> l.id().equals(link))
                .flatMap(l -> car.guards().of(l).stream())
                .flatMap(guard -> guard.fuses().stream())
                .map(Part::id)
                .distinct()
                .toList();
    }
}
