package kerbfolio.formula;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import kerbfolio.formula.Piece.Kind;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Notation;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.quantity.UnitSystem;

/**
 * Reads a formula as printed mathematics. A division is stacked only where it stands in no bracket, root, power or other
 * fraction, because those do not stretch; elsewhere it is a solidus. Each part therefore carries both forms.
 */
final class Typeset implements Fold<Typeset.Part> {
    private static final int LOOSE = 1;
    private static final int NEGATIVE = 2;
    private static final int SUM = 3;
    /** Something with a solidus: neither a sign nor a second solidus may follow it without a bracket (ISO 80000-1). */
    private static final int SOLIDUS = 4;

    private static final int PRODUCT = 5;
    private static final int POWER = 6;
    private static final int ATOM = 7;

    /** A part in its stacked and its one-line form, and how tightly each binds. */
    record Part(List<Piece> stacked, int stackedLevel, List<Piece> inline, int level) {}

    private final Function<String, Part> symbols;
    private final BiFunction<Node, Part, Part> sums;

    private Typeset(Function<String, Part> symbols, BiFunction<Node, Part, Part> sums) {
        this.symbols = symbols;
        this.sums = sums;
    }

    static Piece equation(String result, Node tree) {
        var pieces = new ArrayList<>(Piece.symbol(result).parts());
        pieces.add(text(" = "));
        pieces.addAll(tree.read(new Typeset(Typeset::name, Typeset::sum)).stacked());
        return Piece.of(Kind.GROUP, pieces);
    }

    static Piece condition(Node tree) {
        return Piece.of(
                Kind.GROUP, tree.read(new Typeset(Typeset::name, Typeset::sum)).inline());
    }

    static Piece substituted(Working working, UnitSystem system) {
        Formula formula = working.formula();
        Function<String, Part> symbols = symbol -> {
            if (formula.isConstant(symbol)) {
                Quantity constant = formula.constant(symbol).value();
                return value(constant.number(), constant.digits().replace('-', '\u2212'), constant.unit());
            }
            Declared declared = formula.declared(symbol);
            return declared.each() ? name(symbol) : value(working.term(symbol), system.of(declared.unit()));
        };
        BiFunction<Node, Part, Part> sums =
                (list, part) -> value(Amount.exact(working.summed(list)), Typeset.unitOfSum(list, formula, system));
        return Piece.of(
                Kind.GROUP, formula.tree().read(new Typeset(symbols, sums)).stacked());
    }

    /** A sum prints as its total: the entries stand in a table of their own. */
    private static Unit unitOfSum(Node list, Formula formula, UnitSystem system) {
        if (list instanceof Node.Symbol symbol) {
            return system.of(formula.declared(symbol.name()).unit());
        }
        List<Node> sides = ((Node.Apply) list).operands();
        Unit left = unitOfSum(sides.get(0), formula, system);
        Unit right = sides.get(1) instanceof Node.Symbol ? unitOfSum(sides.get(1), formula, system) : left;
        return left.times(right);
    }

    @Override
    public Part number(String digits) {
        // No exponent on paper; but 0.0060 keeps its last digit.
        String shown = digits.matches("[0-9.]+") ? digits : Notation.plain(Double.parseDouble(digits));
        return both(List.of(Piece.leaf(Kind.NUMBER, shown)), ATOM);
    }

    @Override
    public Part unit(Unit unit) {
        return both(List.of(Piece.leaf(Kind.UNIT, unit.text())), level(unit));
    }

    @Override
    public Part symbol(String name) {
        return symbols.apply(name);
    }

    @Override
    public Part apply(Op op, List<Part> operands, Node.Apply at) {
        return switch (op) {
            case ADD, SUBTRACT -> infix(operands, op == Op.ADD ? " + " : " \u2212 ", SUM);
            case GREATER, LESS -> infix(operands, " " + op.sign() + " ", LOOSE);
            case AT_LEAST -> infix(operands, " ≥ ", LOOSE);
            case AT_MOST -> infix(operands, " ≤ ", LOOSE);
            case MULTIPLY -> infix(operands, at.operands().get(1) instanceof Node.UnitMark ? "" : "·", PRODUCT);
            case DIVIDE -> fraction(operands.get(0), operands.get(1));
            case POWER -> power(operands.get(0), operands.get(1));
            case NEGATE -> negative(operands.get(0));
            case SQRT ->
                both(List.of(Piece.of(Kind.ROOT, List.of(group(operands.get(0).inline())))), ATOM);
            case SUM -> sums.apply(at.operands().get(0), operands.get(0));
            default -> call(op, operands);
        };
    }

    private static Part infix(List<Part> operands, String sign, int level) {
        Part left = operands.get(0);
        Part right = operands.get(1);
        // −a + b needs no bracket; b + (−a) does.
        int leftFloor = level == SUM ? NEGATIVE : level;
        // a − (b − c) keeps its bracket; a + b + c needs none. A figure takes its unit as it is: 5 km/h.
        int rightFloor = sign.isEmpty() ? SOLIDUS : sign.equals(" + ") || sign.equals("·") ? level : level + 1;
        var stacked = new ArrayList<>(bracketed(left, leftFloor, true));
        var inline = new ArrayList<>(bracketed(left, leftFloor, false));
        if (!sign.isEmpty()) {
            stacked.add(text(sign));
            inline.add(text(sign));
        }
        stacked.addAll(bracketed(right, rightFloor, true));
        inline.addAll(bracketed(right, rightFloor, false));
        int whole = sign.isEmpty() ? Math.min(level, right.level()) : level;
        return new Part(stacked, whole, inline, whole);
    }

    private static Part fraction(Part above, Part below) {
        var inline = new ArrayList<>(bracketed(above, PRODUCT, false));
        inline.add(text("/"));
        inline.addAll(bracketed(below, POWER, false));
        Piece stacked = Piece.of(Kind.FRACTION, List.of(group(above.inline()), group(below.inline())));
        return new Part(List.of(stacked), PRODUCT, inline, SOLIDUS);
    }

    private static Part power(Part base, Part exponent) {
        var pieces = new ArrayList<>(bracketed(base, ATOM, false));
        pieces.add(Piece.of(Kind.SUP, exponent.inline()));
        return both(pieces, POWER);
    }

    private static Part negative(Part operand) {
        var pieces = new ArrayList<Piece>();
        pieces.add(text("\u2212"));
        pieces.addAll(bracketed(operand, SOLIDUS, false));
        return both(pieces, NEGATIVE);
    }

    private static Part sum(Node list, Part operand) {
        var pieces = new ArrayList<Piece>();
        pieces.add(text("Σ"));
        pieces.addAll(list instanceof Node.Symbol ? operand.inline() : brackets(operand.inline()));
        return both(pieces, PRODUCT);
    }

    private static Part call(Op op, List<Part> operands) {
        var inside = new ArrayList<Piece>();
        for (Part operand : operands) {
            if (!inside.isEmpty()) {
                inside.add(text("; "));
            }
            inside.addAll(operand.inline());
        }
        var pieces = new ArrayList<Piece>();
        boolean bars = op == Op.ABS;
        pieces.add(text(bars ? "|" : op == Op.LOG10 ? "lg" : op.sign()));
        pieces.addAll(bars ? inside : brackets(inside));
        if (bars) {
            pieces.add(text("|"));
        }
        return both(pieces, ATOM);
    }

    private static List<Piece> bracketed(Part part, int floor, boolean stacked) {
        if (stacked && part.stackedLevel() >= floor) {
            return part.stacked();
        }
        return part.level() >= floor ? part.inline() : brackets(part.inline());
    }

    private static List<Piece> brackets(List<Piece> inside) {
        var pieces = new ArrayList<Piece>();
        pieces.add(text("("));
        pieces.addAll(inside);
        pieces.add(text(")"));
        return pieces;
    }

    private static Part value(double number, String digits, Unit unit) {
        var pieces = new ArrayList<Piece>();
        pieces.add(Piece.leaf(Kind.NUMBER, digits));
        if (!unit.text().isEmpty()) {
            pieces.add(Piece.leaf(Kind.UNIT, unit.text()));
        }
        return both(pieces, number < 0 ? NEGATIVE : unit.text().isEmpty() ? ATOM : Math.min(PRODUCT, level(unit)));
    }

    /** A figure somebody wrote in this unit keeps the digits he wrote. */
    private static Part value(Term term, Unit unit) {
        if (term instanceof Known known
                && known.isWritten()
                && known.unit().text().equals(unit.text())) {
            String digits = known.quantity().digits().replace('-', '\u2212');
            return value(known.quantity().number(), digits, unit);
        }
        return value(term.amount().orElseThrow(), unit);
    }

    private static Part value(Amount amount, Unit unit) {
        double number = unit.fromSi(amount.si());
        int known = Notation.decimalsFor(unit.differenceFromSi(amount.expanded()));
        int decimals = known < 0 ? Notation.decimalsOf(number) : known;
        return value(number, Notation.fixed(number, decimals, RoundingMode.HALF_EVEN), unit);
    }

    private static Part name(String symbol) {
        return both(Piece.symbol(symbol).parts(), ATOM);
    }

    /** A unit by itself binds as its own signs do. */
    private static int level(Unit unit) {
        if (unit.text().contains("/")) {
            return SOLIDUS;
        }
        boolean product = unit.text().contains("·");
        return product ? PRODUCT : unit.text().chars().allMatch(Character::isLetter) ? ATOM : POWER;
    }

    private static Part both(List<Piece> pieces, int level) {
        return new Part(List.copyOf(pieces), level, List.copyOf(pieces), level);
    }

    private static Piece group(List<Piece> pieces) {
        return Piece.of(Kind.GROUP, pieces);
    }

    private static Piece text(String text) {
        return Piece.leaf(Kind.TEXT, text);
    }
}
