package kerbfolio.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A piece of printed mathematics, as plain data: whoever lays out a page decides what a fraction looks like.
 *
 * @param kind what it is
 * @param text its characters; empty for a kind that only holds parts
 * @param parts what it holds; empty for a kind that only has text
 */
public record Piece(Kind kind, String text, List<Piece> parts) {
    private static final Map<String, String> GREEK = Map.ofEntries(
            Map.entry("alpha", "α"),
            Map.entry("beta", "β"),
            Map.entry("gamma", "γ"),
            Map.entry("Delta", "Δ"),
            Map.entry("delta", "δ"),
            Map.entry("eta", "η"),
            Map.entry("theta", "θ"),
            Map.entry("kappa", "κ"),
            Map.entry("lambda", "λ"),
            Map.entry("mu", "µ"),
            Map.entry("nu", "ν"),
            Map.entry("rho", "ρ"),
            Map.entry("tau", "τ"),
            Map.entry("phi", "φ"),
            Map.entry("omega", "ω"),
            Map.entry("pi", "π"),
            Map.entry("epsilon", "ε"),
            Map.entry("zeta", "ζ"),
            Map.entry("sigma", "σ"),
            Map.entry("xi", "ξ"),
            Map.entry("chi", "χ"),
            Map.entry("psi", "ψ"));

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

    /** A formula's symbol as it is printed: {@code V_1'} is V, sub 1, prime. */
    public static Piece symbol(String name) {
        String bare = name.replace("'", "");
        int under = bare.indexOf('_');
        String stem = under < 0 ? bare : bare.substring(0, under);
        var pieces = new ArrayList<Piece>();
        pieces.add(leaf(Kind.SYMBOL, GREEK.getOrDefault(stem, stem)));
        if (under >= 0) {
            pieces.add(of(
                    Kind.SUB, List.of(leaf(Kind.TEXT, bare.substring(under + 1).replace('_', ',')))));
        }
        if (bare.length() < name.length()) {
            pieces.add(leaf(Kind.TEXT, "′".repeat(name.length() - bare.length())));
        }
        return of(Kind.GROUP, pieces);
    }

    static Piece leaf(Kind kind, String text) {
        return new Piece(kind, text, List.of());
    }

    static Piece of(Kind kind, List<Piece> parts) {
        return new Piece(kind, "", parts);
    }
}
