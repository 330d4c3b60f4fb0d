package kerbfolio.formula;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerbfolio.formula.Piece.Kind;
import kerbfolio.quantity.Unit;

/**
 * Reads printed mathematics the way a person does, from left to right by the rules of arithmetic, and has an evaluator
 * that knows nothing of this program work it out. A unit counts as its factor, sign by sign as it is printed.
 */
final class PrintedReader {
    private static final Map<String, String> SIGNS = Map.ofEntries(
            Map.entry(" + ", "+"),
            Map.entry(" − ", "-"),
            Map.entry("−", "-"),
            Map.entry("·", "*"),
            Map.entry("/", "/"),
            Map.entry("(", "("),
            Map.entry(")", ")"),
            Map.entry("; ", ","),
            Map.entry(" > ", ">"),
            Map.entry(" < ", "<"),
            Map.entry(" ≥ ", ">="),
            Map.entry(" ≤ ", "<="),
            Map.entry("ln", "ln"),
            Map.entry("lg", "lg"),
            Map.entry("exp", "exp"),
            Map.entry("sin", "sin"),
            Map.entry("cos", "cos"),
            Map.entry("tan", "tan"),
            Map.entry("atan", "atan"),
            Map.entry("min", "least"),
            Map.entry("max", "most"),
            Map.entry("if", "choose"));

    /** Printed symbol to its SI values, several for a list. */
    private final Map<String, double[]> values;

    private final Map<String, Double> variables = new HashMap<>();

    /** @param values SI values by symbol as declared; two that print alike are refused */
    PrintedReader(Map<String, double[]> values) {
        this.values = new HashMap<>();
        values.forEach((symbol, value) -> {
            if (this.values.put(flat(Piece.symbol(symbol)), value) != null) {
                throw new AssertionError("two symbols print as " + flat(Piece.symbol(symbol)));
            }
        });
    }

    /** The value of a printed expression. */
    double value(Piece printed) {
        return Arithmetician.value(text(leaves(printed)), variables);
    }

    /** The value of what stands right of the equals sign. */
    double result(Piece equation) {
        List<Piece> pieces = leaves(equation);
        int at = 0;
        while (!pieces.get(at).text().equals(" = ")) {
            at++;
        }
        return Arithmetician.value(text(pieces.subList(at + 1, pieces.size())), variables);
    }

    /** Groups are only a manner of storing: a reader sees what is in them. */
    private static List<Piece> leaves(Piece piece) {
        if (piece.kind() != Kind.GROUP) {
            return List.of(piece);
        }
        return piece.parts().stream().flatMap(part -> leaves(part).stream()).toList();
    }

    private String text(List<Piece> pieces) {
        return text(pieces, 0);
    }

    /** @param row which entry a list stands for */
    private String text(List<Piece> pieces, int row) {
        var text = new StringBuilder();
        for (int i = 0; i < pieces.size(); ) {
            Piece piece = pieces.get(i);
            int end = i + 1;
            if (piece.text().equals("Σ")) {
                end = endOfOperand(pieces, i + 1);
                text.append(sum(pieces.subList(i + 1, end)));
            } else if (piece.kind() == Kind.SYMBOL) {
                end = endOfSymbol(pieces, i);
                text.append(variable(value(pieces.subList(i, end))[row]));
            } else {
                text.append(one(piece, text.toString()));
            }
            i = end;
        }
        return text.toString();
    }

    private String one(Piece piece, String before) {
        return switch (piece.kind()) {
            case NUMBER -> piece.text().replace('−', '-');
            case UNIT -> (before.matches(".*[0-9a-z)]") ? "*" : "") + unit(piece.text());
            case SUP -> "^(" + text(parts(piece)) + ")";
            case ROOT -> "sqrt(" + text(parts(piece)) + ")";
            case FRACTION ->
                "((" + text(leaves(piece.parts().get(0))) + ")/("
                        + text(leaves(piece.parts().get(1))) + "))";
            case TEXT -> piece.text().equals("|") ? bar(before) : sign(piece.text());
            default -> throw new AssertionError(piece.kind() + " stands alone");
        };
    }

    private static List<Piece> parts(Piece piece) {
        return piece.parts().stream().flatMap(part -> leaves(part).stream()).toList();
    }

    private static String sign(String text) {
        String sign = SIGNS.get(text);
        if (sign == null) {
            throw new AssertionError("`" + text + "` is a sign nobody reads");
        }
        return sign;
    }

    /** A bar closes where something stands before it that could be complete. */
    private static String bar(String before) {
        return before.matches(".*[0-9a-z)]") ? ")" : "abs(";
    }

    private static String unit(String text) {
        return text.replaceAll("([²³⁴])", "^$1")
                .replace('²', '2')
                .replace('³', '3')
                .replace('⁴', '4')
                .replace('·', '*')
                .transform(PrintedReader::factors);
    }

    private static String factors(String unit) {
        var text = new StringBuilder();
        for (String sign : unit.split("(?<=[*/^])|(?=[*/^])")) {
            boolean symbol = !sign.matches("[*/^]|[0-9.]+");
            text.append(symbol ? new BigDecimal(Unit.of(sign).factor()).toPlainString() : sign);
        }
        return text.toString();
    }

    private static int endOfSymbol(List<Piece> pieces, int from) {
        int end = from + 1;
        while (end < pieces.size()
                && (pieces.get(end).kind() == Kind.SUB || pieces.get(end).text().matches("′+"))) {
            end++;
        }
        return end;
    }

    private static int endOfOperand(List<Piece> pieces, int from) {
        if (!pieces.get(from).text().equals("(")) {
            return endOfSymbol(pieces, from);
        }
        int end = from;
        while (!pieces.get(end).text().equals(")")) {
            end++;
        }
        return end + 1;
    }

    /** A sum over lists is worked out row by row. */
    private String sum(List<Piece> operand) {
        int rows = 0;
        for (int i = 0; i < operand.size(); i++) {
            if (operand.get(i).kind() == Kind.SYMBOL) {
                rows = value(operand.subList(i, endOfSymbol(operand, i))).length;
            }
        }
        double total = 0;
        for (int row = 0; row < rows; row++) {
            total += Arithmetician.value(text(operand, row), variables);
        }
        return variable(total);
    }

    private double[] value(List<Piece> symbol) {
        double[] value = values.get(flat(symbol));
        if (value == null) {
            throw new AssertionError("no symbol is printed as " + flat(symbol));
        }
        return value;
    }

    private String variable(double value) {
        String name = "v" + variables.size();
        variables.put(name, value);
        return name;
    }

    private static String flat(Piece piece) {
        return flat(leaves(piece));
    }

    private static String flat(List<Piece> pieces) {
        var flat = new ArrayList<String>();
        for (Piece piece : pieces) {
            flat.add(piece.kind() + ":" + piece.text() + (piece.parts().isEmpty() ? "" : flat(piece.parts())));
        }
        return String.join(" ", flat);
    }
}
