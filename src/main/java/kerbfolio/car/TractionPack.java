package kerbfolio.car;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Box;
import kerbfolio.job.Cell;
import kerbfolio.job.Module;
import kerbfolio.job.Pack;
import kerbfolio.job.Part;
import kerbfolio.job.ResistanceKind;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/** The traction battery by its figures: voltages, resistance, charge and energy, of the whole pack and of each box. */
public final class TractionPack {
    /** Modules in parallel strings, cell groups in series in each. */
    static final Formula VOLTAGE = Formula.of("U = N/p*n*u")
            .giving("voltage of the pack", "V")
            .with("N", "modules in all", "1")
            .with("p", "strings in parallel", "1")
            .with("n", "cell groups in a module", "1")
            .with("u", "voltage of a cell", "V")
            .needs("p > 0")
            .from(Source.CIRCUITS.clause("sources in series"))
            .build();

    static final Formula BOX_VOLTAGE = Formula.of("U_b = N_b*n*u")
            .giving("highest voltage of the box", "V")
            .with("N_b", "modules in the box", "1")
            .with("n", "cell groups in a module", "1")
            .with("u", "highest voltage of a cell", "V")
            .from(Source.CIRCUITS.clause("sources in series"))
            .build();

    static final Formula RESISTANCE = Formula.of("R_p = N/p^2*R_m")
            .giving("resistance of the pack", "mΩ")
            .with("N", "modules in all", "1")
            .with("p", "strings in parallel", "1")
            .with("R_m", "resistance of a module", "mΩ")
            .needs("p > 0")
            .from(Source.CIRCUITS.clause("resistances in series and in parallel"))
            .build();

    static final Formula CAPACITY = Formula.of("Q = p*c*q")
            .giving("capacity of the pack", "Ah")
            .with("p", "strings in parallel", "1")
            .with("c", "cells in a group", "1")
            .with("q", "capacity of a cell", "Ah")
            .from(Source.CIRCUITS.clause("sources in parallel"))
            .build();

    static final Formula ENERGY = Formula.of("E = U_n*Q")
            .giving("energy of the pack at its nominal voltage", "kWh")
            .with("U_n", "nominal voltage", "V")
            .with("Q", "capacity", "Ah")
            .from(Source.CIRCUITS.clause("energy of a charge moved through a voltage"))
            .build();

    private final Evidence evidence;
    private final @Nullable Pack pack;
    private final Working highest;
    private final Working nominal;
    private final Working lowest;
    private final Working resistance;
    private final Map<String, Working> boxes = new LinkedHashMap<>();

    TractionPack(Evidence evidence, @Nullable Pack pack) {
        this.evidence = evidence;
        this.pack = pack;
        Cell cell = pack == null ? null : pack.cell();
        this.highest = voltage("highest working voltage", "max-voltage", cell == null ? null : cell.maxVoltage());
        this.nominal = voltage("nominal voltage", "nominal-voltage", cell == null ? null : cell.nominalVoltage());
        this.lowest = voltage("lowest working voltage", "min-voltage", cell == null ? null : cell.minVoltage());
        this.resistance = Working.fill(RESISTANCE)
                .put("N", modules())
                .put("p", strings())
                .put("R_m", moduleResistance())
                .work();
        for (Box box : pack == null ? List.<Box>of() : pack.boxes()) {
            boxes.put(
                    box.part(),
                    Working.fill(BOX_VOLTAGE)
                            .named("highest voltage of " + box.part())
                            .put("N_b", modulesIn(box.part()))
                            .put("n", groupsInModule())
                            .put(
                                    "u",
                                    cell(
                                            "highest voltage of a cell",
                                            "max-voltage",
                                            cell == null ? null : cell.maxVoltage()))
                            .work());
        }
    }

    private Working voltage(String name, String key, @Nullable Quantity ofCell) {
        return Working.fill(VOLTAGE)
                .named(name)
                .put("N", modules())
                .put("p", strings())
                .put("n", groupsInModule())
                .put("u", cell(name.replace("working voltage", "voltage") + " of a cell", key, ofCell))
                .work();
    }

    private Term cell(String name, String key, @Nullable Quantity quantity) {
        return stated("cell." + key, name, "V", quantity, cellFrom());
    }

    /** A figure of the pack section, stated by a data sheet or a person. */
    private Term stated(String key, String name, String unit, @Nullable Quantity quantity, @Nullable String from) {
        return evidence.stated("pack." + key, name, unit, quantity, from);
    }

    private @Nullable String cellFrom() {
        return pack == null || pack.cell() == null ? null : pack.cell().from();
    }

    private @Nullable String moduleFrom() {
        return pack == null || pack.module() == null ? null : pack.module().from();
    }

    private @Nullable Module module() {
        return pack == null ? null : pack.module();
    }

    /** Whether anything is recorded of a traction battery. */
    public boolean isRecorded() {
        return pack != null;
    }

    /** The section as written. */
    public Optional<Pack> section() {
        return Optional.ofNullable(pack);
    }

    public Term modules() {
        return stated("modules", "modules in all", "1", pack == null ? null : pack.modules(), moduleFrom());
    }

    /** Modules in one box. */
    public Term modulesIn(String box) {
        List<Box> all = pack == null ? List.of() : pack.boxes();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).part().equals(box)) {
                return stated(
                        "boxes[" + i + "].modules",
                        "modules in " + box,
                        "1",
                        all.get(i).modules(),
                        moduleFrom());
            }
        }
        return Absent.unrecorded("pack.boxes", "modules in " + box, "1");
    }

    /** Strings in parallel; one where none is written would be a guess. */
    public Term strings() {
        return stated("strings", "strings in parallel", "1", pack == null ? null : pack.strings(), moduleFrom());
    }

    /** Temperature points of a module. */
    public Term temperaturePointsInModule() {
        Module module = module();
        return stated(
                "module.temperature-points",
                "temperature points of a module",
                "1",
                module == null ? null : module.temperaturePoints(),
                moduleFrom());
    }

    public Term groupsInModule() {
        Module module = module();
        return stated(
                "module.cell-groups",
                "cell groups in a module",
                "1",
                module == null ? null : module.cellGroups(),
                moduleFrom());
    }

    /** Resistance of a module. One found by a pulse is higher than what a short circuit meets, so it flatters a fuse. */
    public Term moduleResistance() {
        Module module = module();
        Term term = stated(
                "module.resistance",
                "resistance of a module",
                "mΩ",
                module == null ? null : module.resistance(),
                moduleFrom());
        boolean isOhmic = module != null && module.resistanceKind() == ResistanceKind.OHMIC;
        return term instanceof Known known && !isOhmic
                ? known.doubted("the resistance of a module is not said to be ohmic; a pulse figure flatters the fuse")
                : term;
    }

    /** What every trade calls the voltage of this car: all cells full. */
    public Working highestVoltage() {
        return highest;
    }

    public Working nominalVoltage() {
        return nominal;
    }

    public Working lowestVoltage() {
        return lowest;
    }

    public Working resistance() {
        return resistance;
    }

    public Working capacity() {
        Module module = module();
        Cell cell = pack == null ? null : pack.cell();
        return Working.fill(CAPACITY)
                .put("p", strings())
                .put(
                        "c",
                        stated(
                                "module.cells-in-parallel",
                                "cells in a group",
                                "1",
                                module == null ? null : module.cellsInParallel(),
                                moduleFrom()))
                .put(
                        "q",
                        stated(
                                "cell.capacity",
                                "capacity of a cell",
                                "Ah",
                                cell == null ? null : cell.capacity(),
                                cellFrom()))
                .work();
    }

    public Working energy() {
        return Working.fill(ENERGY).put("U_n", nominal).put("Q", capacity()).work();
    }

    /** Highest voltage of a box of cells by itself. */
    public Term boxVoltage(String part) {
        Working box = boxes.get(part);
        return box == null ? new Absent("pack.boxes", "modules in " + part, Unit.of("V"), Absent.UNRECORDED) : box;
    }

    /** Volts of every box whose voltage is known. */
    public Map<String, Double> boxVolts() {
        var volts = new LinkedHashMap<String, Double>();
        boxes.forEach((part, working) -> working.amount().ifPresent(amount -> volts.put(part, amount.si())));
        return volts;
    }

    /** A figure of the currents in force. */
    public Term current(String key, String name, @Nullable Quantity quantity) {
        return stated(
                "currents." + key,
                name,
                "A",
                quantity,
                pack == null || pack.currents() == null ? null : pack.currents().from());
    }

    /** What is missing before the voltage of every recorded box is known. */
    public List<Absent> missingBoxes(List<Part> recorded) {
        var missing = new ArrayList<Absent>();
        recorded.forEach(part -> missing.addAll(boxVoltage(part.id()).missing()));
        return List.copyOf(missing);
    }
}
