package kerbfolio.formula;

import java.util.List;
import java.util.Optional;
import kerbfolio.quantity.Dim;

/** What an operator demands of its operands' dimensions, and the dimension it gives. */
enum UnitRule {
    ALIKE {
        @Override
        Dim of(List<Dim> operands, Node.Apply at) {
            return same(operands, 0);
        }
    },
    COMPARED {
        @Override
        Dim of(List<Dim> operands, Node.Apply at) {
            same(operands, 0);
            return Dim.NONE;
        }
    },
    CHOICE {
        @Override
        Dim of(List<Dim> operands, Node.Apply at) {
            bare(operands.get(0), "the condition of if");
            return same(operands, 1);
        }
    },
    PRODUCT {
        @Override
        Dim of(List<Dim> operands, Node.Apply at) {
            return operands.get(0).times(operands.get(1));
        }
    },
    QUOTIENT {
        @Override
        Dim of(List<Dim> operands, Node.Apply at) {
            return operands.get(0).over(operands.get(1));
        }
    },
    ROOT {
        @Override
        Dim of(List<Dim> operands, Node.Apply at) {
            return operands.get(0).power(0.5);
        }
    },
    BARE {
        @Override
        Dim of(List<Dim> operands, Node.Apply at) {
            return bare(operands.get(0), "the argument of " + at.op().sign());
        }
    },
    POWER {
        @Override
        Dim of(List<Dim> operands, Node.Apply at) {
            bare(operands.get(1), "a power");
            if (operands.get(0).equals(Dim.NONE)) {
                return Dim.NONE;
            }
            double power = literal(at.operands().get(1))
                    .orElseThrow(() -> new ArithmeticException("the power of a figure with a unit is a plain number"));
            return operands.get(0).power(power);
        }
    };

    /**
     * The dimension of the result.
     *
     * @throws ArithmeticException with the reason, if the operands do not fit
     */
    abstract Dim of(List<Dim> operands, Node.Apply at);

    private static Dim same(List<Dim> operands, int from) {
        Dim first = operands.get(from);
        for (Dim other : operands.subList(from, operands.size())) {
            if (!other.equals(first)) {
                throw new ArithmeticException("[" + first + "] with [" + other + "]");
            }
        }
        return first;
    }

    private static Dim bare(Dim dim, String what) {
        if (!dim.equals(Dim.NONE)) {
            throw new ArithmeticException(what + " has the unit [" + dim + "]");
        }
        return dim;
    }

    private static Optional<Double> literal(Node node) {
        if (node instanceof Node.Digits number) {
            return Optional.of(Double.parseDouble(number.digits()));
        }
        if (node instanceof Node.Apply apply && apply.op() == Op.NEGATE) {
            return literal(apply.operands().get(0)).map(value -> -value);
        }
        return Optional.empty();
    }
}
