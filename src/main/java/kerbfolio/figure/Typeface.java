package kerbfolio.figure;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/**
 * The letters of a bundled TrueType file as outlines, read from its tables (OpenType specification 1.9: cmap format 4,
 * hmtx, loca, glyf). The language's own fonts need a font server, a font library of the system and font files of the
 * machine, and their outlines need not be the same from one machine to the next.
 */
final class Typeface {
    private static final int WINDOWS = 3;
    private static final int SEGMENTS = 4;

    private final ByteBuffer file;
    private final Map<String, Integer> tables = new HashMap<>();
    private final double em;
    private final boolean longOffsets;
    private final int metrics;
    private final int map;

    private Typeface(byte[] bytes) {
        file = ByteBuffer.wrap(bytes);
        for (int i = 0; i < ushort(4); i++) {
            int entry = 12 + 16 * i;
            tables.put(new String(bytes, entry, 4, StandardCharsets.US_ASCII), file.getInt(entry + 8));
        }
        em = ushort(table("head") + 18);
        longOffsets = ushort(table("head") + 50) == 1;
        metrics = ushort(table("hhea") + 34);
        map = map();
    }

    /** A face that lies on the class path. */
    static Typeface bundled(String name) {
        try (InputStream in = Typeface.class.getClassLoader().getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("font missing from the program: " + name);
            }
            return new Typeface(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    boolean has(int character) {
        return glyph(character) != 0;
    }

    /** Room the letter takes along the line, in units of the type size. */
    double advance(int character) {
        return ushort(table("hmtx") + 4 * Math.min(glyph(character), metrics - 1)) / em;
    }

    /** The outline at type size 1, on the base line, y pointing down. */
    Path2D outline(int character) {
        Path2D path = new Path2D.Double();
        add(path, glyph(character), AffineTransform.getScaleInstance(1 / em, -1 / em));
        return path;
    }

    private int table(String name) {
        Integer at = tables.get(name);
        if (at == null) {
            throw new IllegalStateException("font without a table " + name);
        }
        return at;
    }

    private int ushort(int at) {
        return Short.toUnsignedInt(file.getShort(at));
    }

    private int map() {
        int cmap = table("cmap");
        for (int i = 0; i < ushort(cmap + 2); i++) {
            int at = cmap + file.getInt(cmap + 8 + 8 * i);
            if (ushort(cmap + 4 + 8 * i) == WINDOWS && ushort(at) == SEGMENTS) {
                return at;
            }
        }
        throw new IllegalStateException("font without a map of the basic plane");
    }

    private int glyph(int character) {
        int twice = ushort(map + 6);
        for (int i = 0; i < twice && character <= 0xFFFF; i += 2) {
            if (character <= ushort(map + 14 + i)) {
                int first = ushort(map + 16 + twice + i);
                int delta = ushort(map + 16 + 2 * twice + i);
                int offset = ushort(map + 16 + 3 * twice + i);
                if (character < first) {
                    return 0;
                }
                int glyph =
                        offset == 0 ? character : ushort(map + 16 + 3 * twice + i + offset + 2 * (character - first));
                return offset != 0 && glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
            }
        }
        return 0;
    }

    private int offset(int glyph) {
        int loca = table("loca");
        return longOffsets ? file.getInt(loca + 4 * glyph) : 2 * ushort(loca + 2 * glyph);
    }

    private void add(Path2D path, int glyph, AffineTransform place) {
        if (offset(glyph) == offset(glyph + 1)) {
            return;
        }
        int at = table("glyf") + offset(glyph);
        int contours = file.getShort(at);
        if (contours < 0) {
            parts(path, at + 10, place);
        } else {
            path.append(new GlyphOutline(file, at + 10, contours).path().getPathIterator(place), false);
        }
    }

    /** A letter put together from others, such as one with an accent. */
    private void parts(Path2D path, int begin, AffineTransform place) {
        int at = begin;
        int flags;
        do {
            flags = ushort(at);
            boolean words = (flags & 1) != 0;
            var part = new AffineTransform(place);
            part.translate(
                    words ? file.getShort(at + 4) : file.get(at + 4), words ? file.getShort(at + 6) : file.get(at + 5));
            int glyph = ushort(at + 2);
            at += words ? 8 : 6;
            if ((flags & 8) != 0) {
                part.scale(fraction(at), fraction(at));
                at += 2;
            } else if ((flags & 0x40) != 0) {
                part.scale(fraction(at), fraction(at + 2));
                at += 4;
            } else if ((flags & 0x80) != 0) {
                part.concatenate(
                        new AffineTransform(fraction(at), fraction(at + 2), fraction(at + 4), fraction(at + 6), 0, 0));
                at += 8;
            }
            add(path, glyph, part);
        } while ((flags & 0x20) != 0);
    }

    /** A number of two bits before the point and fourteen after it. */
    private double fraction(int at) {
        return file.getShort(at) / 16384.0;
    }
}
