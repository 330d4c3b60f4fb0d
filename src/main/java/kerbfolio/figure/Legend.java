package kerbfolio.figure;

import java.util.List;
import java.util.stream.Collectors;

/** What the marks of a drawing stand for, in two columns under it. */
record Legend(List<Entry> entries) {
    private static final double LINE = 9.5;
    private static final double COLUMN = Pen.WIDTH / 2;
    private static final double GAP = 4;
    private static final double MARKS = 15;

    /** A mark of the drawing and what it stands for: beside the drawing, and where there is none to look at. */
    record Entry(String mark, String words, String whole) {
        private List<String> lines() {
            return Words.broken(words, Words.FULL / 2);
        }
    }

    double height() {
        return LINE * half();
    }

    String words() {
        return entries.stream().map(entry -> entry.mark() + " " + entry.whole()).collect(Collectors.joining("; "));
    }

    /** Lines of the first of the two columns. */
    private int half() {
        int whole = entries.stream().mapToInt(entry -> entry.lines().size()).sum();
        int lines = 0;
        for (Entry entry : entries) {
            if (2 * lines >= whole) {
                break;
            }
            lines += entry.lines().size();
        }
        return lines;
    }

    void draw(Pen pen, double begin) {
        int half = half();
        int row = 0;
        for (Entry entry : entries) {
            double x = row < half ? 0 : COLUMN + GAP;
            double top = begin + LINE * (row < half ? row : row - half);
            pen.left(entry.mark(), x, top, Type.STRONG);
            for (String line : entry.lines()) {
                pen.left(pen.fitted(line, COLUMN - MARKS - GAP, Type.SMALL), x + MARKS, top, Type.SMALL);
                top += LINE;
            }
            row += entry.lines().size();
        }
    }
}
