package kerbfolio.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import org.junit.jupiter.api.Test;

/** Voltages by hand: 32 and 56 groups of 4.2 V are 134.4 V and 235.2 V, together 369.6 V; printed rounded up. */
class LiveListTest {
    private final JobText job = TractionText.sound();

    private static List<Live> of(JobText job) {
        return LiveList.of(job.car(), job.limits());
    }

    private Optional<Live> line(String begins, String why) {
        return of(job).stream()
                .filter(live -> live.what().startsWith(begins) && live.why().startsWith(why))
                .findFirst();
    }

    private String volts(String begins, String why) {
        return line(begins, why)
                .orElseThrow(() -> new AssertionError(of(job)))
                .volts()
                .replace('\u00a0', ' ');
    }

    @Test
    void boxesTheirHalvesAndTheSocketStayLiveForGood() {
        assertEquals("135 V", volts("front box", "always"));
        assertEquals("236 V", volts("rear box", "always"));
        assertEquals("370 V", volts("socket of service disconnect", "always"));
        assertEquals("135 V", volts("front fuse, contactor plus", "always: one terminal"));
        assertTrue(line("half-pack", "always").isEmpty(), "each half is one box");
    }

    @Test
    void boxesThatStayJoinedAreAHalfOfTheirSum() {
        job.drop("links", "c-mid-rear")
                .drop("links", "c-mid-front")
                .add("links", "{ id: m, kind: busbar, from: rear-fuse/2, to: front-box/- }")
                .drop("links", "c-plus")
                .add("links", "{ id: p, kind: busbar, from: contactor-plus/2, to: disconnect/1 }")
                .add("links", "{ id: q, kind: busbar, from: disconnect/2, to: junction-box/+ }");
        assertEquals("370 V", volts("half-pack: front box, rear box", "always"));
    }

    @Test
    void theBusIsLiveUntilItHasEmptied() {
        assertEquals("370 V", volts("junction box, inverter, charger, converter, heater", "until their capacitors"));
    }

    @Test
    void whatIsWiredPastTheDisconnectIsNamed() {
        assertTrue(line("charger", "always: no service disconnect").isEmpty());
        job.drop("links", "c-charger-minus")
                .add("links", "{ id: astray, kind: high-voltage, from: charger/-, to: front-box/- }");
        assertEquals("135 V", volts("charger", "always: no service disconnect"));
    }

    @Test
    void aBusTheCellsKeepLiveIsNotSaidToEmpty() {
        job.add("links", "{ id: past, kind: busbar, from: rear-fuse/2, to: front-box/- }");
        assertTrue(line("junction box, inverter", "until").isEmpty());
        assertEquals("370 V", volts("inverter", "always: no service disconnect"));
    }

    @Test
    void whatMayFeedBackIsNamedUnlessSomebodySaysThatItCannot() {
        assertTrue(line("converter", "nobody says").isEmpty());
        job.alter("parts", "converter", ", feeds-back: no", "");
        assertEquals("370 V", volts("converter", "nobody says that it cannot bring voltage back: while it has 12 V"));
        job.alter("parts", "charger", "feeds-back: no", "feeds-back: yes");
        assertEquals("370 V", volts("charger", "it can bring voltage back: while a charge lead is in"));
    }

    @Test
    void theInletIsLiveWhileALeadIsIn() {
        assertEquals("230 V mains", volts("charge inlet", "while a charge lead is in"));
    }

    @Test
    void aMagnetMotorMakesVoltageWhileItTurns() {
        assertEquals("150 V at 5000 rpm", volts("drive unit", "magnet motor"));
        job.alter("parts", "drive-unit", "kind: magnet, ", "");
        assertTrue(line("drive unit", "kind of motor not recorded").isPresent());
        job.alter("parts", "drive-unit", "motor: { ", "motor: { kind: induction, ");
        assertTrue(of(job).stream().noneMatch(live -> live.what().startsWith("drive unit")));
    }

    @Test
    void whatIsNotKnownIsListedAndWhatIsLowIsNot() {
        job.drop("pack.boxes", "front-box");
        assertEquals("not known", volts("front box", "always"));
        assertEquals("236 V", volts("rear box", "always"));
        job.with("pack.cell", "{ from: maker, max-voltage: 1.0 V }")
                .add("pack.boxes", "{ part: front-box, modules: \"8\" }");
        assertTrue(line("front box", "always").isEmpty(), "32 V");
        assertTrue(line("rear box", "always").isEmpty(), "56 V");
        assertEquals("88 V", volts("socket of service disconnect", "always"));
    }

    @Test
    void withoutACircuitNothingIsListed() {
        assertEquals(List.of(), of(JobText.blank()));
    }
}
