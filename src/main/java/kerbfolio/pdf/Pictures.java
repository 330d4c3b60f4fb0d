package kerbfolio.pdf;

import java.util.Map;
import kerbfolio.figure.Figure;
import kerbfolio.photo.Print;

/**
 * What a page may show besides text.
 *
 * @param figures drawings by their id
 * @param photographs prints by the name of their file
 */
public record Pictures(Map<String, Figure> figures, Map<String, Print> photographs) {
    static final Pictures NONE = new Pictures(Map.of(), Map.of());

    /** Keeps its own maps. */
    public Pictures {
        figures = Map.copyOf(figures);
        photographs = Map.copyOf(photographs);
    }
}
