package kerbfolio.figure;

import java.awt.geom.Path2D;
import java.nio.ByteBuffer;

/** One simple letter of a TrueType file: points on and off its curves (OpenType specification 1.9, glyf). */
final class GlyphOutline {
    private static final int ON_CURVE = 0x01;
    private static final int X_SHORT = 0x02;
    private static final int Y_SHORT = 0x04;
    private static final int REPEAT = 0x08;
    private static final int X_SAME = 0x10;
    private static final int Y_SAME = 0x20;

    private final int[] ends;
    private final int[] flags;
    private final int[] x;
    private final int[] y;

    GlyphOutline(ByteBuffer file, int begin, int contours) {
        ends = new int[contours];
        for (int i = 0; i < contours; i++) {
            ends[i] = Short.toUnsignedInt(file.getShort(begin + 2 * i));
        }
        int points = contours == 0 ? 0 : ends[contours - 1] + 1;
        int instructions = begin + 2 * contours;
        ByteBuffer at = file.duplicate().position(instructions + 2 + Short.toUnsignedInt(file.getShort(instructions)));
        flags = flags(at, points);
        x = places(at, X_SHORT, X_SAME);
        y = places(at, Y_SHORT, Y_SAME);
    }

    private static int[] flags(ByteBuffer at, int points) {
        var flags = new int[points];
        for (int i = 0; i < points; i++) {
            flags[i] = at.get();
            for (int again = (flags[i] & REPEAT) == 0 ? 0 : Byte.toUnsignedInt(at.get()); again > 0; again--) {
                flags[i + 1] = flags[i];
                i++;
            }
        }
        return flags;
    }

    private int[] places(ByteBuffer at, int isShort, int same) {
        var places = new int[flags.length];
        int place = 0;
        for (int i = 0; i < places.length; i++) {
            boolean marked = (flags[i] & same) != 0;
            if ((flags[i] & isShort) != 0) {
                place += (marked ? 1 : -1) * Byte.toUnsignedInt(at.get());
            } else if (!marked) {
                place += at.getShort();
            }
            places[i] = place;
        }
        return places;
    }

    Path2D path() {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        int first = 0;
        for (int last : ends) {
            contour(path, first, last);
            first = last + 1;
        }
        return path;
    }

    /** Between two points off the curve lies one on it, half way, which the file leaves out. */
    private void contour(Path2D path, int first, int last) {
        int count = last - first + 1;
        int start = first;
        while (start <= last && !isOn(start)) {
            start++;
        }
        if (start > last) {
            start = first;
            path.moveTo((x[first] + x[last]) / 2.0, (y[first] + y[last]) / 2.0);
            start = last;
        } else {
            path.moveTo(x[start], y[start]);
        }
        for (int i = 1; i <= count; i++) {
            int here = first + (start - first + i) % count;
            int next = first + (start - first + i + 1) % count;
            if (isOn(here)) {
                path.lineTo(x[here], y[here]);
            } else if (isOn(next)) {
                path.quadTo(x[here], y[here], x[next], y[next]);
                i++;
            } else {
                path.quadTo(x[here], y[here], (x[here] + x[next]) / 2.0, (y[here] + y[next]) / 2.0);
            }
        }
        path.closePath();
    }

    private boolean isOn(int point) {
        return (flags[point] & ON_CURVE) != 0;
    }
}
