package kerbfolio;

import java.util.List;

/**
 * A sound high-voltage job of which a test spoils one thing: 22 modules of 4 groups in series, 8 in front and 14 in the
 * rear, at most 369.6 V; a service disconnect between the boxes; a fuse and a contactor on each; inverter, charger,
 * converter and heater behind a junction box.
 */
public final class TractionText {
    private static final String CALIBRATED = "calibrated: 2026-01-01, due: 2027-01-01";
    private static final String INSIDE =
            "enclosure: { place: engine-bay, protection: IP67, opens-with: tool, conductive: yes, from: maker }";

    private TractionText() {}

    public static JobText sound() {
        return readings(pack(links(parts(instruments(JobText.onTwoAxles())))));
    }

    /** The same with the two boxes as two strings side by side instead of one behind the other. */
    public static JobText twoStrings() {
        return sound().with("pack.strings", "\"2\"")
                .alter("links", "c-mid-front", "front-box/-", "front-fuse/2")
                .add("links", bar("b0", "front-box/-", "contactor-minus/1"));
    }

    /** The sound job with a test point and a warning symbol on every case: its first tier lacks nothing. */
    public static JobText complete() {
        JobText job = sound().with("job.tier", "first")
                .alter(
                        "parts",
                        "inverter",
                        "role: inverter",
                        "role: inverter, test-point: { name: lugs + and -, cover: \"small lid, 4 screws\", equipment: gloves }");
        for (String part : List.of(
                "front-box",
                "rear-box",
                "disconnect",
                "junction-box",
                "inverter",
                "drive-unit",
                "charger",
                "converter",
                "heater")) {
            job.add("labels", "{ on: " + part + ", shows: warning-symbol, by: A. Tester, date: 2026-09-30 }");
        }
        return job;
    }

    private static JobText instruments(JobText job) {
        return job.add(
                        "instruments",
                        "{ id: voltmeter, kind: voltmeter, fixed: 0.1 V, of-reading: 0.1 %, " + CALIBRATED + " }")
                .add("instruments", "{ id: cell-meter, kind: cell monitor, fixed: 0.002 V, " + CALIBRATED + " }")
                .add("instruments", "{ id: ohmmeter, kind: ohmmeter, fixed: 0.1 kΩ, " + CALIBRATED + " }")
                .add("instruments", "{ id: tester, kind: insulation tester, of-reading: 5 %, " + CALIBRATED + " }")
                .add("instruments", "{ id: clamp, kind: ammeter, fixed: 0.01 A, " + CALIBRATED + " }")
                .add("instruments", "{ id: watch, kind: watch, fixed: 0.5 s, " + CALIBRATED + " }")
                .add("instruments", "{ id: pilot-meter, kind: pilot meter, fixed: 0.1 %, " + CALIBRATED + " }");
    }

    private static JobText parts(JobText job) {
        return job.add("parts", box("front-box", "front box", "engine-bay", "200 mm"))
                .add("parts", box("rear-box", "rear box", "luggage", "2600 mm"))
                .add("parts", fuse("front-fuse", "front-box", "250 A", "20 kA"))
                .add("parts", fuse("rear-fuse", "rear-box", "250 A", "20 kA"))
                .add("parts", contactor("contactor-plus", "front-box", "1"))
                .add("parts", contactor("contactor-minus", "rear-box", "2"))
                .add("parts", contactor("precharge-contactor", "front-box", "1"))
                .add(
                        "parts",
                        "{ id: precharge-resistor, name: pre-charge resistor, role: precharge-resistor, inside: front-box,"
                                + " electrical: { from: maker, max-voltage: 500 V, resistance: 100 Ω, pulse-energy: 120 J } }")
                .add(
                        "parts",
                        "{ id: disconnect, name: service disconnect, role: disconnect, position: { x: 1900 mm }, "
                                + INSIDE.replace("engine-bay", "luggage")
                                + ", electrical: { from: maker, max-voltage: 500 V, continuous-current: 250 A, peak-current: 400 A },"
                                + " connectors: [ { id: disconnect-plug, opens-with: hand, mated: IPXXD, open: IPXXB, locked: yes, current: 250 A, peak-current: 400 A, from: maker } ] }")
                .add(
                        "parts",
                        load(
                                "junction-box",
                                "junction box",
                                "junction-box",
                                "600 mm",
                                "capacitance: 1 µF, y-capacitance: 0.01 µF, bleed: 1000 kΩ, continuous-current: 250 A, peak-current: 400 A"))
                .add(
                        "parts",
                        load(
                                "inverter",
                                "inverter",
                                "inverter",
                                "100 mm",
                                "capacitance: 500 µF, y-capacitance: 0.2 µF, bleed: 40 kΩ, makers-wait: 5 min"))
                .add(
                        "parts",
                        "{ id: drive-unit, name: drive unit, role: drive-unit, position: { x: 0 mm }, "
                                + INSIDE
                                + ", motor: { kind: magnet, back-voltage: 150 V, back-voltage-at: 5000 rpm, ratio: \"8\", rolling-radius: 300 mm, tow-speed: 50 km/h, from: maker } }")
                .add(
                        "parts",
                        load(
                                        "charger",
                                        "charger",
                                        "charger",
                                        "300 mm",
                                        "capacitance: 20 µF, y-capacitance: 0.05 µF, bleed: 500 kΩ, feeds-back: no")
                                .replace(
                                        " } }",
                                        " }, charger: { from: maker, input-voltage: 230 V, input-current: 32 A, phases: \"1\", power: 6.6 kW, efficiency: 92 % } }"))
                .add(
                        "parts",
                        load(
                                "converter",
                                "converter",
                                "converter",
                                "320 mm",
                                "capacitance: 10 µF, y-capacitance: 0.05 µF, bleed: 500 kΩ, feeds-back: no, continuous-current: 4 A"))
                .add(
                        "parts",
                        load(
                                "heater",
                                "heater",
                                "heater",
                                "-200 mm",
                                "capacitance: 2 µF, y-capacitance: 0.01 µF, bleed: 200 kΩ, continuous-current: 15 A"))
                .add("parts", fuse("heater-fuse", "junction-box", "30 A", "20 kA"))
                .add("parts", fuse("aux-fuse", "junction-box", "30 A", "20 kA"))
                .add(
                        "parts",
                        "{ id: inlet, name: charge inlet, role: inlet, position: { x: 2900 mm }, enclosure: { place: outside, protection: IP67, opens-with: tool, conductive: yes, from: maker },"
                                + " connectors: [ { id: inlet-socket, opens-with: hand, mated: IPXXD, open: IPXXB, locked: yes, current: 32 A, from: maker } ] }")
                .add("parts", "{ id: monitor, name: battery monitor, role: battery-monitor, inside: front-box }");
    }

    private static String box(String id, String name, String place, String x) {
        return "{ id: " + id + ", name: " + name + ", role: battery, position: { x: " + x + " }, "
                + INSIDE.replace("engine-bay", place)
                + ", electrical: { from: maker, makers-wait: 5 min }, connectors: [ { id: " + id
                + "-plug, opens-with: hand, mated: IPXXD, open: IPXXB, locked: yes, current: 250 A, peak-current: 400 A, from: maker } ] }";
    }

    private static String load(String id, String name, String role, String x, String more) {
        return "{ id: " + id + ", name: " + name + ", role: " + role + ", position: { x: " + x + " }, " + INSIDE
                + ", connectors: [ { id: " + id
                + "-plug, opens-with: hand, mated: IPXXD, open: IPXXB, locked: yes, current: 250 A, peak-current: 400 A, from: maker } ], electrical: { from: maker, min-voltage: 200 V, max-voltage: 420 V, "
                + more + " } }";
    }

    private static String fuse(String id, String inside, String current, String breaking) {
        return "{ id: " + id + ", name: " + id.replace('-', ' ') + ", role: fuse, inside: " + inside
                + ", fuse: { from: maker, dc-voltage: 500 V, current: " + current
                + ", derate: 80 %, breaking-capacity: "
                + breaking + ", minimum-breaking: 600 A, let-through: 40000 A²·s,"
                + " curve: [ { current: 700 A, time: 2 s }, { current: 6000 A, time: 1 ms } ] } }";
    }

    private static String contactor(String id, String inside, String plus) {
        return "{ id: " + id + ", name: " + id.replace('-', ' ') + ", role: contactor, inside: " + inside
                + ", electrical: { from: maker, max-voltage: 500 V, continuous-current: 250 A, peak-current: 400 A },"
                + " contactor: { from: maker, breaking-current: 1000 A, reverse-breaking-current: 300 A, polarised: yes, plus-terminal: \""
                + plus + "\" } }";
    }

    private static JobText links(JobText job) {
        return job.add("links", bar("b1", "rear-box/-", "contactor-minus/1"))
                .add("links", cable("c-minus", "contactor-minus/2", "junction-box/-", "4 m"))
                .add("links", bar("b2", "rear-box/+", "rear-fuse/1"))
                .add("links", cable("c-mid-rear", "rear-fuse/2", "disconnect/1", "1 m"))
                .add("links", cable("c-mid-front", "disconnect/2", "front-box/-", "3 m"))
                .add("links", bar("b3", "front-box/+", "front-fuse/1"))
                .add("links", bar("b4", "front-fuse/2", "contactor-plus/1"))
                .add("links", cable("c-plus", "contactor-plus/2", "junction-box/+", "1 m"))
                .add("links", bar("b5", "front-fuse/2", "precharge-contactor/1"))
                .add("links", bar("b6", "precharge-contactor/2", "precharge-resistor/1"))
                .add("links", bar("b7", "precharge-resistor/2", "contactor-plus/2"))
                .add("links", cable("c-inverter", "junction-box", "inverter", "1 m"))
                .add("links", bar("b8", "junction-box/+", "heater-fuse/1"))
                .add("links", thin("c-heater-plus", "heater-fuse/2", "heater/+"))
                .add("links", thin("c-heater-minus", "junction-box/-", "heater/-"))
                .add("links", bar("b9", "junction-box/+", "aux-fuse/1"))
                .add("links", thin("c-charger-plus", "aux-fuse/2", "charger/+"))
                .add("links", thin("c-charger-minus", "junction-box/-", "charger/-"))
                .add("links", thin("c-converter-plus", "aux-fuse/2", "converter/+"))
                .add("links", thin("c-converter-minus", "junction-box/-", "converter/-"))
                .add("links", cable("c-motor", "inverter", "drive-unit", "1 m").replace("high-voltage", "phase"))
                .add("links", thin("c-inlet", "inlet", "charger").replace("high-voltage", "charge"))
                .add(
                        "links",
                        "{ id: loop, kind: interlock, through: [ front-box-plug, rear-box-plug, disconnect-plug, junction-box-plug, inverter-plug, charger-plug, converter-plug, heater-plug ] }");
    }

    private static String bar(String id, String from, String to) {
        return "{ id: " + id + ", kind: busbar, from: " + from + ", to: " + to + " }";
    }

    private static String cable(String id, String from, String to, String length) {
        return "{ id: " + id + ", kind: high-voltage, from: " + from + ", to: " + to
                + ", size: 70 mm², metal: copper, insulation: silicone, length: "
                + length
                + ", voltage: 1000 V, max-temperature: 150 °C, ampacity: 330 A, ampacity-at: 40 °C, ambient: 60 °C, rated-by: maker, colour: orange, place: underfloor }";
    }

    private static String thin(String id, String from, String to) {
        return cable(id, from, to, "1 m").replace("70 mm²", "6 mm²").replace("330 A", "60 A");
    }

    private static JobText pack(JobText job) {
        return job.with("pack.modules", "\"22\"")
                .with("pack.strings", "\"1\"")
                .with(
                        "pack.module",
                        "{ from: maker, cell-groups: \"4\", cells-in-parallel: \"2\", temperature-points: \"2\", resistance: 2.4 mΩ, resistance-kind: ohmic, continuous-current: 220 A, peak-current: 400 A, charge-current: 120 A }")
                .with(
                        "pack.cell",
                        "{ from: maker, nominal-voltage: 3.65 V, max-voltage: 4.2 V, min-voltage: 3.0 V, capacity: 56 Ah, max-temperature: 60 °C, min-temperature: -20 °C, max-charge-temperature: 45 °C, min-charge-temperature: 0 °C }")
                .add("pack.boxes", "{ part: front-box, modules: \"8\" }")
                .add("pack.boxes", "{ part: rear-box, modules: \"14\" }")
                .with(
                        "pack.currents",
                        "{ from: inverter settings, drive: 350 A, drive-continuous: 180 A, regeneration: 80 A, charge: 18 A }")
                .with(
                        "pack.precharge",
                        "{ from: monitor settings, resistor: precharge-resistor, time: 500 ms, by-voltage: yes }")
                .add(
                        "pack.monitors",
                        "{ part: monitor, from: monitor settings, watches: [ { part: front-box, cell-groups: 1-32, temperature-points: 1-16 }, { part: rear-box, cell-groups: 1-56, temperature-points: 1-28 } ], limits: ["
                                + " { on: cell-voltage-high, at: 4.15 V, does: open-contactors }, { on: cell-voltage-low, at: 3.1 V, does: open-contactors },"
                                + " { on: temperature-high, at: 55 °C, does: open-contactors }, { on: temperature-low, at: -15 °C, does: reduce },"
                                + " { on: charge-temperature-low, at: 2 °C, does: stop-charge }, { on: charge-temperature-high, at: 43 °C, does: stop-charge } ] }");
    }

    private static JobText readings(JobText job) {
        String all = "[ front-box, rear-box, junction-box, inverter, charger, converter, heater, disconnect ]";
        return job.add(
                        "readings.isolation",
                        "{ id: iso-1, method: voltmeter, instrument: voltmeter, resistor-instrument: ohmmeter, date: 2026-09-30, by: A. Tester, joined: "
                                + all
                                + ", condition: dry, pack-voltage: 340.0 V, minus-to-chassis: 200.0 V, plus-to-chassis: 130.0 V, with-resistor: 90.0 V, resistor: 150.0 kΩ, meter-resistance: 10 MΩ }")
                .add(
                        "readings.isolation",
                        "{ id: iso-2, method: tester, instrument: tester, date: 2026-09-30, by: A. Tester, joined: "
                                + all + ", condition: dry, test-voltage: 500 V, pole: both, resistance: \"> 200 MΩ\" }")
                .with(
                        "readings.isolation-monitor",
                        "{ instrument: ohmmeter, date: 2026-09-30, by: A. Tester, resistor: 180.0 kΩ, pack-voltage: 369.6 V, isolation: iso-2, warned: yes }")
                .add("readings.bonding", bond("front-box"))
                .add("readings.bonding", bond("rear-box"))
                .add("readings.bonding", bond("disconnect"))
                .add("readings.bonding", bond("junction-box"))
                .add("readings.bonding", bond("inverter"))
                .add("readings.bonding", bond("drive-unit"))
                .add("readings.bonding", bond("charger"))
                .add("readings.bonding", bond("converter"))
                .add("readings.bonding", bond("heater"))
                .add("readings.bonding", bond("inlet").replace("lug beside the seam", "earth pin"))
                .add(
                        "readings.decay",
                        "{ of: inverter, instrument: voltmeter, time-instrument: watch, date: 2026-09-30, by: A. Tester, first: { voltage: 340.0 V, time: 0 s }, second: { voltage: 60.0 V, time: 26.4 s }, active: no }")
                .with(
                        "readings.cells",
                        "{ instrument: cell-meter, date: 2026-09-30, highest: 3.920 V, lowest: 3.910 V, state-of-charge: 70 % }")
                .with(
                        "readings.charge",
                        "{ instrument: pilot-meter, date: 2026-09-30, by: A. Tester, duty: 40.0 %, supply-from: A. Tester, supply-voltage: 230 V, breaker: 32 A, lead-current: 32 A, from-charge: 20 %, to-charge: 80 % }");
    }

    private static String bond(String part) {
        return "{ of: " + part
                + ", point: lug beside the seam, instrument: voltmeter, current-instrument: clamp, date: 2026-09-30, by: A. Tester, current: 10.0 A, voltage: 0.2 V }";
    }
}
