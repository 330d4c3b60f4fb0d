package kerbfolio.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import org.junit.jupiter.api.Test;

class WorkshopTest {
    private static JobText withParts() {
        return JobText.onTwoAxles()
                .add(
                        "parts",
                        "{ id: box, name: battery box, make: Pellin, part-number: \"007\", serial: \"0012345\","
                                + " firmware: \"1.10\", position: { zone: tunnel } }")
                .add("parts", "{ id: bracket, mass: 3 kg, mass-from: maker }")
                .add(
                        "removed",
                        "{ id: engine, fate: \"scrapped, receipt 7\", putting-back: new mounts, position: { zone: front } }");
    }

    /** A serial number is a name, not a number. */
    @Test
    void marksStandAsTheyWereWrittenAndWhatHasNoneIsLeftToTheLedger() {
        assertEquals(
                List.of(new Workshop.PartLine("battery box", "Pellin", "\u2014", "007", "0012345", "1.10", "tunnel")),
                withParts().dossier().workshop().parts());
    }

    @Test
    void whatCameOutSaysWhereItIsAndWhatPuttingItBackNeeds() {
        assertEquals(
                List.of(new Workshop.ReversalLine("engine", "scrapped, receipt 7", "new mounts", "front")),
                withParts().dossier().workshop().reversal());
    }

    @Test
    void theCarAsLeftIsTheCarAsDelivered() {
        var dossier = JobText.onTwoAxles().dossier();
        var left = dossier.workshop().baseline();
        assertEquals(
                List.of("front axle", "rear axle", "whole car"),
                left.stream().map(Fact::label).toList());
        assertEquals(
                dossier.inspection().weights().stream()
                        .map(line -> line.after().large())
                        .toList(),
                left.stream().map(fact -> fact.value().large()).toList());
    }
}
