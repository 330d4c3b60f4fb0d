package kerbfolio.job;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import kerbfolio.TractionText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What joins parts must join parts that are there; ▸ marks where each complaint must point. */
class WiringTest {
    private static final String PARTS = """
            parts:
              - {id: box, role: battery}
              - {id: inverter, role: inverter}
              - {id: fuse, role: fuse}
              - {id: disconnect, role: disconnect, poles: 2}
              - {id: monitor, role: battery-monitor}
              - {id: bracket}
            """;

    @TempDir
    private Path folder;

    private Sheet sheet;

    @BeforeEach
    void unfold() {
        sheet = new Sheet(folder);
    }

    @Test
    void aSoundCircuitIsReadWithoutAComplaint() {
        assertDoesNotThrow(() -> JobFile.read(TractionText.sound().writeTo(folder)));
    }

    @Test
    void anEndNamesAPart() {
        assertEquals(
                List.of(
                        "links > a > from: no part `bxo`; did you mean `box`?",
                        "links > a > to: no part `elsewhere`; list it under parts",
                        "links > b > to: no part `gearbox`; list it under parts"),
                sheet.complaints(PARTS + """
                        links:
                          - {id: a, kind: high-voltage, from: ▸bxo/+, to: ▸elsewhere/1}
                          - {id: b, kind: hose, from: inverter, to: ▸gearbox}
                        """));
    }

    @Test
    void aStrapMayEndOnTheChassis() {
        assertDoesNotThrow(() ->
                sheet.read(Sheet.HEAD + PARTS + "links: [{id: a, kind: earth-strap, from: inverter, to: chassis}]\n"));
        assertEquals(
                List.of("links > a > to: no part `chassis`; list it under parts"),
                sheet.complaints(PARTS + "links: [{id: a, kind: high-voltage, from: inverter/-, to: ▸chassis/1}]\n"));
    }

    /** Numbers of terminals as in IEC 60947-1: 1 and 2 for the first pole, 3 and 4 for the second (from memory). */
    @Test
    void anEndLiesOnATerminalItsPartHas() {
        assertEquals(
                List.of(
                        "links > a > from: `box` has no terminal `1`; it has +, -",
                        "links > a > to: `fuse` has no terminal `+`; it has 1, 2",
                        "links > b > from: `fuse` has no terminal `3`; it has 1, 2",
                        "links > b > to: `disconnect` has no terminal `5`; it has 1, 2, 3, 4",
                        "links > c > to: `monitor` is a battery-monitor and has no terminal of the traction"
                                + " circuit; name what the cable ends on",
                        "links > d > to: `bracket` has no role, so that nobody knows its terminals; write its"
                                + " role under parts"),
                sheet.complaints(PARTS + """
                        links:
                          - {id: a, kind: busbar, from: ▸box/1, to: ▸fuse/+}
                          - {id: b, kind: busbar, from: ▸fuse/3, to: ▸disconnect/5}
                          - {id: c, kind: busbar, from: box/+, to: ▸monitor/1}
                          - {id: d, kind: busbar, from: box/+, to: ▸bracket}
                          - {id: e, kind: phase, from: inverter/U, to: bracket}
                        """));
    }

    @Test
    void whatLiesInTheConductorIsNamedWithItsTerminal() {
        assertEquals(
                List.of("links > a > to: `fuse` lies in the conductor and needs a terminal; write fuse/1 or fuse/2"),
                sheet.complaints(PARTS + "links: [{id: a, kind: busbar, from: box/+, to: ▸fuse}]\n"));
    }

    @Test
    void aTerminalIsNamedAtBothEndsOrAtNone() {
        String words = "one end names a terminal and the other does not; write it at both ends, or at none where the"
                + " link joins both poles";
        assertEquals(List.of("links > a > to: " + words, "links > b > from: " + words), sheet.complaints(PARTS + """
                        links:
                          - {id: a, kind: high-voltage, from: box/+, to: ▸inverter}
                          - {id: b, kind: high-voltage, from: ▸box, to: inverter/+}
                          - {id: c, kind: high-voltage, from: box, to: inverter}
                        """));
    }

    @Test
    void aLinkJoinsTwoThings() {
        assertEquals(
                List.of(
                        "links > a > to: it ends where it begins, at `box/+`; write its other end",
                        "links > b: a high-voltage link joins two parts; write both",
                        "links > c: a busbar link joins two parts; write both"),
                sheet.complaints(PARTS + """
                        links:
                          - {id: a, kind: busbar, from: box/+, to: ▸box/+}
                          - ▸{id: b, kind: high-voltage, from: box/+}
                          - ▸{id: c, kind: busbar, to: box/+}
                          - {id: d, kind: interlock}
                        """));
    }

    @Test
    void aLoopPassesConnectorsThatAreThere() {
        assertEquals(
                List.of("links > a > through > entry 2: no connector `plgu`; did you mean `plug`?"),
                sheet.complaints("""
                        parts: [{id: box, role: battery, connectors: [{id: plug}]}]
                        links: [{id: a, kind: interlock, through: [plug, ▸plgu]}]
                        """));
    }

    @Test
    void anIdMeansOneThingInTheWholeCircuit() {
        assertEquals(
                List.of(
                        "parts > b > connectors > plug > id: `plug` is also a connector of `a`; give one of them"
                                + " another id",
                        "links > a > id: `a` is also the id of a part; give one of them another id",
                        "links > x > id: `x` is the id of two entries; give one another id"),
                sheet.complaints("""
                        parts:
                          - {id: a, role: inverter, connectors: [{id: plug}]}
                          - {id: b, role: heater, connectors: [{id: ▸plug}]}
                        links:
                          - {id: ▸a, kind: shaft}
                          - {id: x, kind: shaft}
                          - {id: ▸x, kind: shaft}
                        """));
    }

    @Test
    void nothingSitsInItself() {
        assertEquals(
                List.of(
                        "parts > a > inside: no part `bxo`; did you mean `box`?",
                        "parts > b > inside: a part does not sit in itself; name what it sits in",
                        "parts > c > inside: these sit in each other: c, d; leave the key out where nothing holds"
                                + " the part"),
                sheet.complaints("""
                        parts:
                          - {id: a, inside: ▸bxo}
                          - {id: b, inside: ▸b}
                          - {id: c, inside: ▸d}
                          - {id: d, inside: c}
                          - {id: e, inside: d}
                          - {id: box}
                        """));
    }

    @Test
    void aSwitchOpensOnePoleOrTwo() {
        assertEquals(
                List.of(
                        "parts > a > poles: `3` cannot be; write 1 or 2",
                        "parts > b > poles: `1.5` cannot be; write 1 or 2",
                        "parts > c > poles: `> 1` cannot be; write 1 or 2"),
                sheet.complaints("""
                        parts:
                          - {id: a, role: disconnect, poles: ▸3}
                          - {id: b, role: disconnect, poles: ▸1.5}
                          - {id: c, role: disconnect, poles: ▸"> 1"}
                        """));
    }
}
