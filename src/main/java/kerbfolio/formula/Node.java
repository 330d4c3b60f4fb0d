package kerbfolio.formula;

import java.util.List;
import kerbfolio.quantity.Unit;

/** A formula as a tree: three kinds of leaf, and operators over operands. */
sealed interface Node {
    /** Where it stands in the text, from 0. */
    int column();

    <T> T read(Fold<T> fold);

    record Digits(String digits, int column) implements Node {
        @Override
        public <T> T read(Fold<T> fold) {
            return fold.number(digits);
        }
    }

    record UnitMark(Unit unit, int column) implements Node {
        @Override
        public <T> T read(Fold<T> fold) {
            return fold.unit(unit);
        }
    }

    record Symbol(String name, int column) implements Node {
        @Override
        public <T> T read(Fold<T> fold) {
            return fold.symbol(name);
        }
    }

    record Apply(Op op, List<Node> operands, int column) implements Node {
        @Override
        public <T> T read(Fold<T> fold) {
            return fold.apply(op, operands.stream().map(node -> node.read(fold)).toList(), this);
        }
    }
}
