package kerbfolio.source;

/**
 * Where a formula or a figure comes from.
 *
 * @param document name and edition of the document
 * @param clause clause, table or equation in it; empty where the whole document is meant
 */
public record Citation(String document, String clause) {
    public Citation {
        if (document.isBlank()) {
            throw new IllegalArgumentException("a citation names its document");
        }
    }

    @Override
    public String toString() {
        return clause.isEmpty() ? document : document + ", " + clause;
    }
}
