package kerbfolio.figure;

import java.awt.BasicStroke;

/** A look of lines. Corners are cut: of all joins only this comes out alike in every version of the language. */
record Line(BasicStroke stroke) {
    static final Line HAIR = solid(0.35f);
    static final Line THIN = solid(0.7f);
    static final Line FIRM = solid(1.4f);
    static final Line DASHED = dashed(0.8f, 3, 2);
    /** A conductor that may stay live; broken, so that it differs in grey as well. */
    static final Line LIVE = dashed(1.7f, 5, 1.6f);

    static final Line CENTRE = dashed(0.35f, 8, 2, 1.5f, 2);

    private static Line solid(float width) {
        return new Line(new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL));
    }

    private static Line dashed(float width, float... dashes) {
        return new Line(new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL, 10, dashes, 0));
    }
}
