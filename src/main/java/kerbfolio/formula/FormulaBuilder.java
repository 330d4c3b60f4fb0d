package kerbfolio.formula;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.quantity.UnknownUnit;
import kerbfolio.source.Citation;
import org.jspecify.annotations.Nullable;

/** Declares what a formula's symbols mean, then refuses whatever is declared but unused or used but undeclared. */
public final class FormulaBuilder {
    private static final Pattern LEFT = Pattern.compile("\\s*(\\p{L}[\\p{L}0-9_]*'*)\\s*=(?!=)");

    private final String text;
    private final String left;
    private final Node tree;
    private final Map<String, Declared> symbols = new LinkedHashMap<>();
    private final Map<String, Constant> constants = new LinkedHashMap<>();
    private final Map<String, Node> needs = new LinkedHashMap<>();
    private final List<Citation> citations = new ArrayList<>();
    private @Nullable Declared result;

    FormulaBuilder(String text) {
        Matcher matcher = LEFT.matcher(text);
        if (!matcher.lookingAt()) {
            throw new FormulaFault(text, "a formula reads `symbol = expression`");
        }
        this.text = text;
        this.left = matcher.group(1);
        this.tree = Parser.parse(text, matcher.end());
    }

    /** Meaning and unit of the result. */
    public FormulaBuilder giving(String meaning, String unit) {
        result = new Declared(left, meaning, unit(unit), false);
        return this;
    }

    /** A symbol with its meaning and the unit it is filled in; {@code "1"} for a bare number. */
    public FormulaBuilder with(String symbol, String meaning, String unit) {
        return declare(new Declared(symbol, meaning, unit(unit), false));
    }

    /** A symbol that stands for a list and may be used only inside {@code sum}. */
    public FormulaBuilder each(String symbol, String meaning, String unit) {
        return declare(new Declared(symbol, meaning, unit(unit), true));
    }

    /** A constant of physics, by name, so that no naked number carries a unit. */
    public FormulaBuilder constant(String symbol, double value, String unit, Citation citation) {
        declareOnce(symbol);
        constants.put(symbol, new Constant(symbol, Quantity.of(value, unit(unit)), citation));
        return this;
    }

    /** A condition of use in the same language, e.g. {@code "U_0 > U_s"}; where it fails there is no evidence. */
    public FormulaBuilder needs(String condition) {
        needs.put(condition, Parser.parse(condition, 0));
        return this;
    }

    public FormulaBuilder from(Citation citation) {
        citations.add(citation);
        return this;
    }

    /**
     * The finished formula.
     *
     * @throws FormulaFault if it does not say what it gives, where it is from, or what each symbol is
     */
    public Formula build() {
        if (citations.isEmpty()) {
            throw new FormulaFault(text, "says not where it is from");
        }
        Set<String> used = new LinkedHashSet<>();
        collect(text, tree, false, used);
        needs.forEach((condition, node) -> collect(condition, node, false, used));
        for (String symbol : used) {
            if (!symbols.containsKey(symbol) && !constants.containsKey(symbol)) {
                throw new FormulaFault(text, "`" + symbol + "` is used but not declared");
            }
        }
        var declared = new LinkedHashSet<>(symbols.keySet());
        declared.addAll(constants.keySet());
        declared.removeAll(used);
        if (!declared.isEmpty()) {
            throw new FormulaFault(text, "`" + declared.iterator().next() + "` is declared but not used");
        }
        return new Formula(this);
    }

    private void collect(String text, Node node, boolean inSum, Set<String> used) {
        if (node instanceof Node.Symbol symbol) {
            used.add(symbol.name());
            boolean list = symbols.containsKey(symbol.name())
                    && symbols.get(symbol.name()).each();
            if (list && !inSum) {
                throw new FormulaFault(text, node.column(), "the list `" + symbol.name() + "` stands outside sum");
            }
            if (inSum && !list) {
                throw new FormulaFault(text, node.column(), "`" + symbol.name() + "` inside sum is not a list");
            }
        } else if (node instanceof Node.Apply apply) {
            if (apply.op() == Op.SUM) {
                summed(text, apply.operands().get(0));
            }
            for (Node operand : apply.operands()) {
                collect(text, operand, inSum || apply.op() == Op.SUM, used);
            }
        }
    }

    /** Inside sum stand the list, a product of two lists, or its square: what every spreadsheet engine computes alike. */
    private static void summed(String text, Node node) {
        boolean allowed = node instanceof Node.Symbol
                || (node instanceof Node.Apply apply && (isProductOfLists(apply) || isSquareOfList(apply)));
        if (!allowed) {
            throw new FormulaFault(text, node.column(), "sum takes a list, a product of two lists, or a list squared");
        }
    }

    private static boolean isProductOfLists(Node.Apply apply) {
        return apply.op() == Op.MULTIPLY && apply.operands().stream().allMatch(Node.Symbol.class::isInstance);
    }

    private static boolean isSquareOfList(Node.Apply apply) {
        return apply.op() == Op.POWER
                && apply.operands().get(0) instanceof Node.Symbol
                && apply.operands().get(1) instanceof Node.Digits power
                && power.digits().equals("2");
    }

    private FormulaBuilder declare(Declared symbol) {
        declareOnce(symbol.symbol());
        symbols.put(symbol.symbol(), symbol);
        return this;
    }

    private void declareOnce(String symbol) {
        if (symbols.containsKey(symbol) || constants.containsKey(symbol)) {
            throw new FormulaFault(text, "`" + symbol + "` is declared twice");
        }
    }

    private Unit unit(String spelt) {
        if (spelt.isBlank()) {
            throw new FormulaFault(text, "a unit is missing; write 1 for a bare number");
        }
        try {
            return Unit.of(spelt);
        } catch (UnknownUnit unknown) {
            throw new FormulaFault(text, String.valueOf(unknown.getMessage()));
        }
    }

    String text() {
        return text;
    }

    Declared result() {
        if (result == null) {
            throw new FormulaFault(text, "says not what it gives");
        }
        return result;
    }

    Node tree() {
        return tree;
    }

    Map<String, Declared> symbols() {
        return symbols;
    }

    Map<String, Constant> constants() {
        return constants;
    }

    Map<String, Node> needs() {
        return needs;
    }

    List<Citation> citations() {
        return citations;
    }
}
