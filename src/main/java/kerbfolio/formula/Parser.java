package kerbfolio.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerbfolio.quantity.Unit;
import kerbfolio.quantity.UnknownUnit;

/**
 * Precedence climbing over one line of text. Multiplication is always written; {@code ^} binds to the right and before
 * a leading minus; a name is a function only before a bracket; a unit stands in square brackets.
 */
final class Parser {
    private static final Pattern TOKEN = Pattern.compile("\\s*(?:([0-9]+(?:\\.[0-9]+)?(?:[eE][+-]?[0-9]+)?)"
            + "|(\\p{L}[\\p{L}0-9_]*'*)|\\[([^\\]\\[]+)\\]|(>=|<=|[-+*/^()<>,=]))");
    private static final int POWER_LEVEL = 5;
    private static final int UNARY_LEVEL = 4;

    private final String text;
    private final Matcher token;
    private int start;
    private int end;

    private Parser(String text, int from) {
        this.text = text;
        this.token = TOKEN.matcher(text);
        this.end = from;
        next();
    }

    /** Reads the expression that starts at {@code from} and fills the rest of the text. */
    static Node parse(String text, int from) {
        var parser = new Parser(text, from);
        Node node = parser.expression(0);
        if (parser.start < text.length()) {
            throw parser.fault("nothing may follow here");
        }
        return node;
    }

    private Node expression(int floor) {
        Node left = operand();
        while (true) {
            String sign = sign();
            int level = level(sign);
            if (level <= floor) {
                return left;
            }
            int column = start;
            next();
            // The right side of ^ climbs to ^ again, so 2^3^2 is 2^(3^2); all others bind to the left.
            Node right = expression(level == POWER_LEVEL ? level - 1 : level);
            left = new Node.Apply(
                    Op.between(sign).orElseThrow(() -> fault("no operator")), List.of(left, right), column);
        }
    }

    private Node operand() {
        int column = start;
        if (start >= text.length()) {
            throw fault("something is missing here");
        }
        if (sign().equals("-")) {
            next();
            return new Node.Apply(Op.NEGATE, List.of(expression(UNARY_LEVEL)), column);
        }
        if (sign().equals("(")) {
            next();
            Node inner = expression(0);
            close();
            return inner;
        }
        if (token.group(1) != null) {
            String digits = token.group(1);
            next();
            return new Node.Digits(digits, column);
        }
        if (token.group(3) != null) {
            Unit unit = unit(token.group(3));
            next();
            return new Node.UnitMark(unit, column);
        }
        if (token.group(2) != null) {
            String name = token.group(2);
            next();
            return sign().equals("(") ? function(name, column) : new Node.Symbol(name, column);
        }
        throw fault("a figure, a name or a bracket was expected");
    }

    private Node function(String name, int column) {
        Op op = Op.function(name).orElseThrow(() -> new FormulaFault(text, column, "no function `" + name + "`"));
        var operands = new ArrayList<Node>();
        do {
            next();
            operands.add(expression(0));
        } while (sign().equals(","));
        close();
        if (operands.size() != op.operands()) {
            throw new FormulaFault(text, column, name + " takes " + op.operands() + ", not " + operands.size());
        }
        return new Node.Apply(op, List.copyOf(operands), column);
    }

    private Unit unit(String spelt) {
        try {
            Unit unit = Unit.of(spelt);
            if (unit.offset() != 0) {
                throw fault("inside a formula a temperature is in kelvin");
            }
            return unit;
        } catch (UnknownUnit unknown) {
            throw fault(String.valueOf(unknown.getMessage()));
        }
    }

    private void close() {
        if (!sign().equals(")")) {
            throw fault("a closing bracket was expected");
        }
        next();
    }

    private static int level(String sign) {
        return switch (sign) {
            case ">", "<", ">=", "<=" -> 1;
            case "+", "-" -> 2;
            case "*", "/" -> 3;
            case "^" -> POWER_LEVEL;
            default -> 0;
        };
    }

    private String sign() {
        return start >= text.length() || token.group(4) == null ? "" : token.group(4);
    }

    private void next() {
        if (text.substring(end).isBlank()) {
            start = text.length();
            end = start;
            return;
        }
        if (!token.find(end) || token.start() != end) {
            String rest = text.substring(end).stripLeading();
            start = text.length() - rest.length();
            throw fault("`" + rest.strip() + "` is not of the language");
        }
        end = token.end();
        start = end - token.group().strip().length();
    }

    private FormulaFault fault(String what) {
        return new FormulaFault(text, start, what);
    }
}
