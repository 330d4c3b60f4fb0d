package kerbfolio.car;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Box;
import kerbfolio.job.Pack;
import kerbfolio.job.Part;
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

    private final PackPlate plate;
    private final @Nullable Pack pack;
    private final Working highest;
    private final Working nominal;
    private final Working lowest;
    private final Working resistance;
    private final Map<String, Working> boxes = new LinkedHashMap<>();

    TractionPack(Evidence evidence, @Nullable Pack pack) {
        this.plate = new PackPlate(evidence, pack);
        this.pack = pack;
        this.highest = voltage("highest working voltage", plate.highestCellVoltage());
        this.nominal = voltage("nominal voltage", plate.nominalCellVoltage());
        this.lowest = voltage("lowest working voltage", plate.lowestCellVoltage());
        this.resistance = Working.fill(RESISTANCE)
                .put("N", plate.modules())
                .put("p", plate.strings())
                .put("R_m", plate.moduleResistance())
                .work();
        for (Box box : pack == null ? List.<Box>of() : pack.boxes()) {
            boxes.put(
                    box.part(),
                    Working.fill(BOX_VOLTAGE)
                            .named("highest voltage of " + box.part())
                            .put("N_b", plate.modulesIn(box.part()))
                            .put("n", plate.groupsInModule())
                            .put("u", plate.highestCellVoltage())
                            .work());
        }
    }

    private Working voltage(String name, Term ofCell) {
        return Working.fill(VOLTAGE)
                .named(name)
                .put("N", plate.modules())
                .put("p", plate.strings())
                .put("n", plate.groupsInModule())
                .put("u", ofCell)
                .work();
    }

    /** Whether anything is recorded of a traction battery. */
    public boolean isRecorded() {
        return pack != null;
    }

    /** The section as written. */
    public Optional<Pack> section() {
        return Optional.ofNullable(pack);
    }

    /** Its figures as they are written. */
    public PackPlate plate() {
        return plate;
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
        return Working.fill(CAPACITY)
                .put("p", plate.strings())
                .put("c", plate.cellsInGroup())
                .put("q", plate.cellCapacity())
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

    /** What is missing before the voltage of every recorded box is known. */
    public List<Absent> missingBoxes(List<Part> recorded) {
        var missing = new ArrayList<Absent>();
        recorded.forEach(part -> missing.addAll(boxVoltage(part.id()).missing()));
        return List.copyOf(missing);
    }
}
