package kerbfolio.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerbfolio.check.Limit;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Unit;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * The register of readings: every leaf figure once. All other sheets take it from here, and what somebody changes here
 * can be taken back into the job file by the path beside it.
 */
final class ReadingsSheet {
    static final String NAME = "Readings";
    static final int NUMBER = 2;
    static final int SI = 4;

    private static final int TITLE = 0;
    private static final int HEAD = 2;
    private static final int[] WIDTHS = {44, 40, 12, 9, 13, 10, 12, 13, 52};

    private static final String LIMITS = "limits";
    private static final String TABLES = "published tables";
    private static final String COUNTED = "counted and solved";
    private static final List<String> FIRST = List.of("vehicle", "weighings", "parts", "removed", "stated");
    private static final List<String> LAST = List.of(TABLES, LIMITS, COUNTED);

    private final Map<String, List<Term>> sections = new LinkedHashMap<>();

    ReadingsSheet(Arrangement arrangement) {
        FIRST.forEach(section -> sections.put(section, new ArrayList<>()));
        var last = new LinkedHashMap<String, List<Term>>();
        LAST.forEach(section -> last.put(section, new ArrayList<>()));
        for (Term leaf : arrangement.leaves()) {
            String section = section(leaf);
            (LAST.contains(section) ? last : sections)
                    .computeIfAbsent(section, key -> new ArrayList<>())
                    .add(leaf);
        }
        sections.putAll(last);
        sections.values().removeIf(List::isEmpty);
    }

    private static String section(Term leaf) {
        if (leaf instanceof Limit) {
            return LIMITS;
        }
        String path = leaf instanceof Known known ? known.path() : leaf instanceof Absent absent ? absent.path() : "";
        if (JobPath.isTable(path)) {
            return TABLES;
        }
        if (JobPath.of(leaf).isEmpty()) {
            return leaf instanceof Absent ? LIMITS : COUNTED;
        }
        return path.split("[.\\[]", 2)[0];
    }

    /** Enters where every leaf figure will stand, in SI. */
    void settle(AddressBook addresses) {
        int row = HEAD + 1;
        for (List<Term> leaves : sections.values()) {
            row++;
            for (Term leaf : leaves) {
                addresses.settle(leaf, new Spot(NAME, row, SI, leaf.unit().coherent()));
                row++;
            }
        }
    }

    void write(AddressBook addresses, Binding binding) {
        Pen pen = binding.sheet(NAME, HEAD, WIDTHS);
        pen.text(TITLE, 0, "Readings: every figure the workings start from, once", Look.TITLE);
        pen.text(
                TITLE + 1,
                0,
                "Numbers on a light ground may be changed; everything computed from them follows. What counts is the job "
                        + "file: the shop takes changes into it and issues again.",
                Look.SMALL_LINE);
        pen.texts(HEAD, 0, Look.HEAD, "figure", "in the job file; for a limit, set and key");
        pen.text(HEAD, NUMBER, "number", Look.FIGURE_HEAD);
        pen.text(HEAD, 3, "unit", Look.HEAD);
        pen.text(HEAD, SI, "in SI, live", Look.FIGURE_HEAD);
        pen.text(HEAD, 5, "SI unit", Look.HEAD);
        pen.text(HEAD, 6, "U (k = 2), figure at issue, not live", Look.FIGURE_HEAD);
        pen.texts(HEAD, 7, Look.HEAD, "basis", "instrument and date, or who");
        var inputs = new CellRangeAddressList();
        for (Map.Entry<String, List<Term>> section : sections.entrySet()) {
            int row = addresses.spot(section.getValue().get(0)).row() - 1;
            pen.text(row, 0, section.getKey(), Look.HEADING);
            for (Term leaf : section.getValue()) {
                row++;
                line(pen, row, leaf, inputs);
            }
        }
        if (inputs.countRanges() > 0) {
            numbersOnly(pen.sheet(), inputs);
        }
    }

    private static void line(Pen pen, int row, Term leaf, CellRangeAddressList inputs) {
        pen.text(row, 0, leaf.name(), Look.TEXT);
        pen.text(row, 1, place(leaf), Look.SMALL);
        Unit unit = leaf.unit();
        boolean editable = isEditable(leaf);
        Optional<Amount> amount = leaf.amount();
        number(pen, row, leaf, editable);
        if (editable) {
            inputs.addCellRangeAddress(row, NUMBER, row, NUMBER);
        }
        pen.text(row, 3, unit.text(), Look.TEXT);
        String si = new Spot(NAME, row, NUMBER, unit).toSi();
        if (amount.isPresent()) {
            pen.formula(row, SI, si, amount.get().si(), Look.FIGURE, Decimals.of(leaf, unit.coherent()));
            double reach = unit.differenceFromSi(amount.get().expanded());
            pen.number(row, 6, reach, Look.FIGURE, Decimals.ofReach(amount.get(), unit));
        } else {
            pen.formula(row, SI, si, Pen.NOTHING, Look.FIGURE);
            pen.text(row, 6, Pen.NOTHING, Look.FIGURE);
        }
        pen.text(row, 5, unit.coherent().text(), Look.TEXT);
        pen.text(row, 7, leaf.basis().word(), Look.TEXT);
        pen.text(row, 8, leaf.origin(), Look.TEXT);
    }

    private static String place(Term leaf) {
        return leaf instanceof Limit limit
                ? limit.set() + ", " + limit.key()
                : JobPath.of(leaf).orElse("");
    }

    private static void number(Pen pen, int row, Term leaf, boolean editable) {
        Look look = editable ? Look.INPUT : Look.FIGURE;
        if (leaf.amount().isEmpty()) {
            pen.blank(row, NUMBER, look);
            return;
        }
        double number = leaf instanceof Known known
                ? known.quantity().number()
                : leaf.unit().fromSi(leaf.amount().get().si());
        pen.number(row, NUMBER, number, look, editable ? Pen.AS_TYPED : Decimals.of(leaf, leaf.unit()));
    }

    /** One number somebody wrote, or one that is simply not written yet. */
    private static boolean isEditable(Term leaf) {
        Optional<String> path = JobPath.of(leaf);
        return leaf instanceof Absent absent
                ? absent.isUnrecorded() && path.filter(JobPath::isNumber).isPresent()
                : path.isPresent();
    }

    private static void numbersOnly(XSSFSheet sheet, CellRangeAddressList inputs) {
        var helper = sheet.getDataValidationHelper();
        DataValidationConstraint anyNumber = helper.createDecimalConstraint(
                DataValidationConstraint.OperatorType.BETWEEN, "-1000000000000", "1000000000000");
        DataValidation validation = helper.createValidation(anyNumber, inputs);
        validation.setShowErrorBox(true);
        validation.createErrorBox("A number", "Write the number alone; its unit stands beside it.");
        sheet.addValidationData(validation);
    }
}
