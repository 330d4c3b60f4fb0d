package kerbfolio.formula;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Citation;

/**
 * An engineering formula, written once as text with declared symbols. It is computed, checked for units, moved by its
 * causes of doubt, printed and turned into a spreadsheet cell from that one text.
 */
public final class Formula {
    private final String text;
    private final Declared result;
    private final Node tree;
    private final Map<String, Declared> symbols;
    private final Map<String, Constant> constants;
    private final Map<String, Node> needs;
    private final List<Citation> citations;

    Formula(FormulaBuilder builder) {
        this.text = builder.text();
        this.result = builder.result();
        this.tree = builder.tree();
        this.symbols = Collections.unmodifiableMap(new LinkedHashMap<>(builder.symbols()));
        this.constants = Collections.unmodifiableMap(new LinkedHashMap<>(builder.constants()));
        this.needs = Collections.unmodifiableMap(new LinkedHashMap<>(builder.needs()));
        this.citations = List.copyOf(builder.citations());
    }

    /** Begins a formula, e.g. {@code "t = R*C*ln(U_0/U_s)"}. */
    public static FormulaBuilder of(String text) {
        return new FormulaBuilder(text);
    }

    /** The formula as written. */
    public String text() {
        return text;
    }

    /** The symbol on the left, its meaning and unit. */
    public Declared result() {
        return result;
    }

    public List<Declared> symbols() {
        return List.copyOf(symbols.values());
    }

    public List<Constant> constants() {
        return List.copyOf(constants.values());
    }

    /** Conditions of use, as written. */
    public List<String> needs() {
        return List.copyOf(needs.keySet());
    }

    /** The conditions of use as printed mathematics. */
    public List<Piece> printedNeeds() {
        return needs.values().stream().map(Typeset::condition).toList();
    }

    public List<Citation> citations() {
        return citations;
    }

    /** The formula as printed mathematics, result symbol first. */
    public Piece printed() {
        return Typeset.equation(result.symbol(), tree);
    }

    /**
     * The formula as a spreadsheet expression in the result's unit, fully bracketed.
     *
     * @param address gives, for a symbol, the address of a cell in the symbol's declared unit; for a list, a range in SI
     */
    public String cell(UnaryOperator<String> address) {
        return CellForm.of(this, address);
    }

    /**
     * The conditions of use as spreadsheet expressions, each 1 where it holds and 0 where not.
     *
     * @param address as for {@link #cell}
     */
    public List<String> cellNeeds(UnaryOperator<String> address) {
        return needs.values().stream()
                .map(need -> CellForm.of(this, need, address))
                .toList();
    }

    /**
     * Walks the formula's units.
     *
     * @throws FormulaFault if an operator does not fit or the result is not what was declared
     */
    public void checkUnits() {
        Dimensions.check(this);
    }

    Declared declared(String symbol) {
        Declared declared = symbols.get(symbol);
        if (declared == null) {
            throw new FormulaFault(text, "no symbol `" + symbol + "`");
        }
        return declared;
    }

    boolean isConstant(String symbol) {
        return constants.containsKey(symbol);
    }

    /** A constant's value and unit. */
    Constant constant(String symbol) {
        Constant constant = constants.get(symbol);
        if (constant == null) {
            throw new FormulaFault(text, "no constant `" + symbol + "`");
        }
        return constant;
    }

    Unit unitOf(String symbol) {
        return isConstant(symbol)
                ? constant(symbol).value().unit()
                : declared(symbol).unit();
    }

    Node tree() {
        return tree;
    }

    Map<String, Node> conditions() {
        return needs;
    }

    @Override
    public String toString() {
        return text;
    }
}
