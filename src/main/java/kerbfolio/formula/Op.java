package kerbfolio.formula;

import java.util.Arrays;
import java.util.Optional;

/** Every operator and function of the formula language, one line each; nothing else is accepted. */
enum Op {
    ADD("+", 2, x -> x[0] + x[1], UnitRule.ALIKE, "(%s+%s)"),
    SUBTRACT("-", 2, x -> x[0] - x[1], UnitRule.ALIKE, "(%s-%s)"),
    MULTIPLY("*", 2, x -> x[0] * x[1], UnitRule.PRODUCT, "(%s*%s)"),
    DIVIDE("/", 2, x -> x[0] / x[1], UnitRule.QUOTIENT, "(%s/%s)"),
    POWER("^", 2, x -> Math.pow(x[0], x[1]), UnitRule.POWER, "(%s^%s)"),
    NEGATE("neg", 1, x -> -x[0], UnitRule.ALIKE, "(-%s)"),
    GREATER(">", 2, x -> x[0] > x[1] ? 1 : 0, UnitRule.COMPARED, "IF(%s>%s,1,0)"),
    LESS("<", 2, x -> x[0] < x[1] ? 1 : 0, UnitRule.COMPARED, "IF(%s<%s,1,0)"),
    AT_LEAST(">=", 2, x -> x[0] >= x[1] ? 1 : 0, UnitRule.COMPARED, "IF(%s>=%s,1,0)"),
    AT_MOST("<=", 2, x -> x[0] <= x[1] ? 1 : 0, UnitRule.COMPARED, "IF(%s<=%s,1,0)"),
    SQRT("sqrt", 1, x -> Math.sqrt(x[0]), UnitRule.ROOT, "SQRT(%s)"),
    LN("ln", 1, x -> Math.log(x[0]), UnitRule.BARE, "LN(%s)"),
    LOG10("log10", 1, x -> Math.log10(x[0]), UnitRule.BARE, "LOG10(%s)"),
    EXP("exp", 1, x -> Math.exp(x[0]), UnitRule.BARE, "EXP(%s)"),
    SIN("sin", 1, x -> Math.sin(x[0]), UnitRule.BARE, "SIN(%s)"),
    COS("cos", 1, x -> Math.cos(x[0]), UnitRule.BARE, "COS(%s)"),
    TAN("tan", 1, x -> Math.tan(x[0]), UnitRule.BARE, "TAN(%s)"),
    ATAN("atan", 1, x -> Math.atan(x[0]), UnitRule.BARE, "ATAN(%s)"),
    ABS("abs", 1, x -> Math.abs(x[0]), UnitRule.ALIKE, "ABS(%s)"),
    MIN("min", 2, x -> Math.min(x[0], x[1]), UnitRule.ALIKE, "MIN(%s,%s)"),
    MAX("max", 2, x -> Math.max(x[0], x[1]), UnitRule.ALIKE, "MAX(%s,%s)"),
    IF("if", 3, x -> x[0] != 0 ? x[1] : x[2], UnitRule.CHOICE, "IF(%s<>0,%s,%s)"),
    SUM("sum", 1, x -> Arrays.stream(x).sum(), UnitRule.ALIKE, "SUM(%s)");

    /** Arithmetic on SI numbers. */
    interface Arithmetic {
        double of(double... x);
    }

    private final String sign;
    private final int operands;

    @SuppressWarnings("ImmutableEnumChecker") // every lambda above captures nothing
    private final Arithmetic arithmetic;

    private final UnitRule unitRule;
    private final String cell;

    Op(String sign, int operands, Arithmetic arithmetic, UnitRule unitRule, String cell) {
        this.sign = sign;
        this.operands = operands;
        this.arithmetic = arithmetic;
        this.unitRule = unitRule;
        this.cell = cell;
    }

    String sign() {
        return sign;
    }

    int operands() {
        return operands;
    }

    double of(double... x) {
        return arithmetic.of(x);
    }

    UnitRule unitRule() {
        return unitRule;
    }

    String cell() {
        return cell;
    }

    /** A choice between branches, where a small move of an input can change the law itself. */
    boolean branches() {
        return this == MIN || this == MAX || this == IF || this == ABS || unitRule == UnitRule.COMPARED;
    }

    boolean isFunction() {
        return Character.isLetter(sign.charAt(0)) && this != NEGATE;
    }

    static Optional<Op> function(String name) {
        return Arrays.stream(values())
                .filter(op -> op.isFunction() && op.sign.equals(name))
                .findFirst();
    }

    static Optional<Op> between(String sign) {
        return Arrays.stream(values())
                .filter(op -> !op.isFunction() && op.sign.equals(sign))
                .findFirst();
    }
}
