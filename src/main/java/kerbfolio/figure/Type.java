package kerbfolio.figure;

import java.awt.Color;
import java.awt.Font;

/** Looks of words. */
enum Type {
    NOTE(Font.PLAIN, 7, Pen.GREY),
    SMALL(Font.PLAIN, 7, Pen.INK),
    LABEL(Font.BOLD, 7.5f, Pen.GREY),
    TEXT(Font.PLAIN, 8, Pen.INK),
    STRONG(Font.BOLD, 8, Pen.INK),
    LOUD(Font.BOLD, 10, Pen.ACCENT);

    private final int style;
    private final float size;
    private final Color colour;

    Type(int style, float size, Color colour) {
        this.style = style;
        this.size = size;
        this.colour = colour;
    }

    Font font() {
        return new Font(Font.SANS_SERIF, style, 1).deriveFont(size);
    }

    /** Height of the type [pt]. */
    double size() {
        return size;
    }

    Color colour() {
        return colour;
    }
}
