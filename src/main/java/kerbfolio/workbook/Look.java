package kerbfolio.workbook;

/** How a cell looks and whether it may be changed. */
enum Look {
    /** The sheet's own name. */
    TITLE,
    /** Begins a block: a question, a section. */
    HEADING,
    /** Column heads. */
    HEAD,
    /** Column heads over figures. */
    FIGURE_HEAD,
    TEXT,
    /** What is set apart in small type: sources, paths, explanations. */
    SMALL,
    /** A small head over a column of figures. */
    SMALL_HEAD,
    /** A line that runs on over empty cells to its right. */
    LINE,
    SMALL_LINE,
    FIGURE,
    /** A verdict or a state: told by the word. */
    WORD,
    /** A number somebody may change. */
    INPUT,
    /** Words or a date somebody may change. */
    INPUT_TEXT;

    boolean isInput() {
        return this == INPUT || this == INPUT_TEXT;
    }

    boolean isBold() {
        return this == TITLE || this == HEADING || this == HEAD || this == FIGURE_HEAD || this == WORD;
    }

    boolean isSmall() {
        return this == SMALL || this == SMALL_HEAD || this == SMALL_LINE;
    }

    boolean isRight() {
        return this == FIGURE || this == FIGURE_HEAD || this == SMALL_HEAD || this == INPUT;
    }

    boolean isWrapped() {
        return this != TITLE && this != HEADING && this != LINE && this != SMALL_LINE && this != FIGURE;
    }

    boolean isHead() {
        return this == HEAD || this == FIGURE_HEAD;
    }

    /** Whether a thin rule runs under it. */
    boolean isRuled() {
        return this == TEXT || this == SMALL || this == FIGURE || this == WORD || isInput();
    }
}
