package kerbfolio.car;

import java.util.List;
import java.util.function.Function;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.job.Box;
import kerbfolio.job.Cell;
import kerbfolio.job.Module;
import kerbfolio.job.Pack;
import kerbfolio.job.ResistanceKind;
import kerbfolio.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** The figures of the traction battery as its data sheets and settings give them. */
public final class PackPlate {
    private final Evidence evidence;
    private final @Nullable Pack pack;

    PackPlate(Evidence evidence, @Nullable Pack pack) {
        this.evidence = evidence;
        this.pack = pack;
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
        return ofModule("temperature-points", "temperature points of a module", "1", Module::temperaturePoints);
    }

    public Term groupsInModule() {
        return ofModule("cell-groups", "cell groups in a module", "1", Module::cellGroups);
    }

    /** Resistance of a module. One found by a pulse is higher than what a short circuit meets, so it flatters a fuse. */
    public Term moduleResistance() {
        Term term = ofModule("resistance", "resistance of a module", "mΩ", Module::resistance);
        Module module = module();
        boolean isOhmic = module != null && module.resistanceKind() == ResistanceKind.OHMIC;
        return term instanceof Known known && !isOhmic
                ? known.doubted("the resistance of a module is not said to be ohmic; a pulse figure flatters the fuse")
                : term;
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

    Term cellsInGroup() {
        return ofModule("cells-in-parallel", "cells in a group", "1", Module::cellsInParallel);
    }

    Term highestCellVoltage() {
        return ofCell("max-voltage", "highest voltage of a cell", "V", Cell::maxVoltage);
    }

    Term nominalCellVoltage() {
        return ofCell("nominal-voltage", "nominal voltage of a cell", "V", Cell::nominalVoltage);
    }

    Term lowestCellVoltage() {
        return ofCell("min-voltage", "lowest voltage of a cell", "V", Cell::minVoltage);
    }

    Term cellCapacity() {
        return ofCell("capacity", "capacity of a cell", "Ah", Cell::capacity);
    }

    private Term ofModule(String key, String name, String unit, Function<Module, @Nullable Quantity> figure) {
        Module module = module();
        return stated("module." + key, name, unit, module == null ? null : figure.apply(module), moduleFrom());
    }

    private Term ofCell(String key, String name, String unit, Function<Cell, @Nullable Quantity> figure) {
        Cell cell = pack == null ? null : pack.cell();
        return stated(
                "cell." + key, name, unit, cell == null ? null : figure.apply(cell), cell == null ? null : cell.from());
    }

    /** A figure of the pack section, stated by a data sheet or a person. */
    private Term stated(String key, String name, String unit, @Nullable Quantity quantity, @Nullable String from) {
        return evidence.stated("pack." + key, name, unit, quantity, from);
    }

    private @Nullable String moduleFrom() {
        return pack == null || pack.module() == null ? null : pack.module().from();
    }

    private @Nullable Module module() {
        return pack == null ? null : pack.module();
    }
}
