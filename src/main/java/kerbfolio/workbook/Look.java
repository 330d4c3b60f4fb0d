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

    /** Heads sit on what they head. */
    boolean sitsLow() {
        return isHead() || this == SMALL_HEAD || this == HEADING;
    }

    boolean isRight() {
        return this == FIGURE || this == FIGURE_HEAD || this == SMALL_HEAD || this == INPUT;
    }

    boolean isWrapped() {
        return this != TITLE && this != HEADING && this != LINE && this != SMALL_LINE && this != FIGURE;
    }

    /** Words keep off the figure that may stand to their left. */
    boolean isIndented() {
        return isWrapped() && !isRight();
    }

    /** Characters of running text that go into the width of one character of a column, which is that of a figure. */
    double density() {
        return isSmall() ? 1.3 : isBold() ? 1.05 : 1.15;
    }

    boolean isHead() {
        return this == HEAD || this == FIGURE_HEAD;
    }

    /** Whether a thin rule runs under it. */
    boolean isRuled() {
        return this == TEXT || this == SMALL || this == FIGURE || this == WORD || isInput();
    }
}
