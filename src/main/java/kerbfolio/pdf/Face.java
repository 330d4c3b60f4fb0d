package kerbfolio.pdf;

import java.util.List;

/** The cuts that are bundled: four of the text face, two of the symbol face. */
enum Face {
    REGULAR('R', "liberation/LiberationSans-Regular.ttf"),
    BOLD('B', "liberation/LiberationSans-Bold.ttf"),
    ITALIC('I', "liberation/LiberationSans-Italic.ttf"),
    BOLD_ITALIC('J', "liberation/LiberationSans-BoldItalic.ttf"),
    SYMBOL('S', "net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf"),
    SYMBOL_BOLD('T', "net/sf/jasperreports/fonts/dejavu/DejaVuSans-Bold.ttf");

    static final List<Face> TEXT = List.of(REGULAR, BOLD, ITALIC, BOLD_ITALIC);
    static final List<Face> SYMBOLS = List.of(SYMBOL, SYMBOL_BOLD);

    private final char letter;
    private final String file;

    Face(char letter, String file) {
        this.letter = letter;
        this.file = file;
    }

    /** The letter that marks its subsets in a PDF. */
    char letter() {
        return letter;
    }

    /** Where the font file lies on the class path. */
    String file() {
        return file;
    }

    static Face text(boolean bold, boolean italic) {
        if (bold) {
            return italic ? BOLD_ITALIC : BOLD;
        }
        return italic ? ITALIC : REGULAR;
    }

    static Face symbol(boolean bold) {
        return bold ? SYMBOL_BOLD : SYMBOL;
    }
}
