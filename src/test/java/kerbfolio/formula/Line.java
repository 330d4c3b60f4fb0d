package kerbfolio.formula;

/**
 * Printed mathematics as one line of text: a stacked fraction is {@code [above|below]}, a subscript {@code _(…)}, a
 * superscript {@code ^(…)}, a root {@code √(…)}, and a unit follows a space.
 */
final class Line {
    private Line() {}

    static String of(Piece piece) {
        String inside = String.join("", piece.parts().stream().map(Line::of).toList());
        return switch (piece.kind()) {
            case TEXT, SYMBOL, NUMBER -> piece.text();
            case UNIT -> " " + piece.text();
            case SUB -> "_(" + inside + ")";
            case SUP -> "^(" + inside + ")";
            case ROOT -> "√(" + inside + ")";
            case FRACTION ->
                "[" + of(piece.parts().get(0)) + "|" + of(piece.parts().get(1)) + "]";
            case GROUP -> inside;
        };
    }
}
