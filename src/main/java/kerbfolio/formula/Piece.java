package kerbfolio.formula;

import java.util.List;

/**
 * A piece of printed mathematics, as plain data: whoever lays out a page decides what a fraction looks like.
 *
 * @param kind what it is
 * @param text its characters; empty for a kind that only holds parts
 * @param parts what it holds; empty for a kind that only has text
 */
public record Piece(Kind kind, String text, List<Piece> parts) {
    /** What a piece is. A fraction has two parts, each a group; a root has one. */
    public enum Kind {
        TEXT,
        SYMBOL,
        NUMBER,
        UNIT,
        SUB,
        SUP,
        FRACTION,
        ROOT,
        GROUP
    }

    public Piece {
        parts = List.copyOf(parts);
    }

    /** A formula's symbol with its subscript and primes, as it is printed. */
    public static Piece symbol(String name) {
        return of(Kind.GROUP, Typeset.name(name));
    }

    static Piece leaf(Kind kind, String text) {
        return new Piece(kind, text, List.of());
    }

    static Piece of(Kind kind, List<Piece> parts) {
        return new Piece(kind, "", parts);
    }
}
