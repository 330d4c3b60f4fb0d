package kerbfolio.pdf;

import java.awt.Graphics2D;
import java.util.function.Consumer;
import kerbfolio.figure.Figure;

/** A drawing for tests, 72 pt by 36 pt. */
record Sketch(String id, String alternative, Consumer<Graphics2D> strokes) implements Figure {
    @Override
    public String caption() {
        return "A sketch.";
    }

    @Override
    public double width() {
        return 72;
    }

    @Override
    public double height() {
        return 36;
    }

    @Override
    public void draw(Graphics2D canvas, double width, double height) {
        strokes.accept(canvas);
    }
}
