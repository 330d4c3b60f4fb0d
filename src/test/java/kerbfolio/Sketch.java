package kerbfolio;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import kerbfolio.figure.Figure;

/** A drawing for tests, one inch by half an inch, that remembers the room it was given [pt]. */
public record Sketch(String id, String alternative, Consumer<Graphics2D> strokes, List<Double> room) implements Figure {
    public Sketch(String id, String alternative, Consumer<Graphics2D> strokes) {
        this(id, alternative, strokes, new ArrayList<>());
    }

    public Sketch(Consumer<Graphics2D> strokes) {
        this("sketch", "A sketch of nothing.", strokes);
    }

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
        room.addAll(List.of(width, height));
        strokes.accept(canvas);
    }
}
