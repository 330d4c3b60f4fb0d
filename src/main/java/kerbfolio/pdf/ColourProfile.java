package kerbfolio.pdf;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The sRGB colour space as an ICC profile of version 2.1 (ICC.1:1998-09): three primaries adapted to D50 and one tone
 * curve (IEC 61966-2-1). Made here because every Java runtime carries slightly different bytes of its own.
 */
final class ColourProfile {
    private static final int HEADER = 128;
    private static final int TAG = 12;
    private static final int CURVE_POINTS = 1024;
    private static final int MAX = 65535;
    private static final double[] D50 = {0.9642, 1.0, 0.8249};

    private ColourProfile() {}

    static byte[] sRgb() {
        byte[] curve = part(ColourProfile::curve);
        Map<String, byte[]> tags = new LinkedHashMap<>();
        tags.put("desc", part(ColourProfile::description));
        tags.put("cprt", part(out -> text(out, "text", "No copyright, use freely\0")));
        tags.put("wtpt", part(out -> xyz(out, D50)));
        tags.put("rXYZ", part(out -> xyz(out, 0.43607, 0.22249, 0.01392)));
        tags.put("gXYZ", part(out -> xyz(out, 0.38515, 0.71687, 0.09708)));
        tags.put("bXYZ", part(out -> xyz(out, 0.14307, 0.06061, 0.71410)));
        tags.put("rTRC", curve);
        tags.put("gTRC", curve);
        tags.put("bTRC", curve);
        return profile(tags);
    }

    private static byte[] profile(Map<String, byte[]> tags) {
        int begin = HEADER + 4 + TAG * tags.size();
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        byte[] table = part(out -> {
            out.writeInt(tags.size());
            for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
                ascii(out, tag.getKey());
                out.writeInt(begin + body.size());
                out.writeInt(tag.getValue().length);
                body.writeBytes(tag.getValue());
            }
        });
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(part(out -> header(out, begin + body.size())));
        all.writeBytes(table);
        all.writeBytes(body.toByteArray());
        return all.toByteArray();
    }

    private static void header(DataOutputStream out, int size) throws IOException {
        out.writeInt(size);
        out.writeInt(0); // no preferred colour module
        out.writeInt(0x02100000); // version 2.1
        ascii(out, "mntrRGB XYZ ");
        for (int part : new int[] {2000, 1, 1, 0, 0, 0}) { // a fixed date: the profile never changes
            out.writeShort(part);
        }
        ascii(out, "acsp");
        out.write(new byte[28]); // platform, flags, maker, model, attributes, perceptual intent: none
        for (double value : D50) {
            fixed(out, value);
        }
        out.write(new byte[HEADER - out.size()]);
    }

    /** Tone curve of IEC 61966-2-1: linear near black, then a power of 2.4. */
    private static void curve(DataOutputStream out) throws IOException {
        ascii(out, "curv");
        out.writeInt(0);
        out.writeInt(CURVE_POINTS);
        for (int i = 0; i < CURVE_POINTS; i++) {
            double signal = i / (CURVE_POINTS - 1.0);
            double light = signal <= 0.04045 ? signal / 12.92 : Math.pow((signal + 0.055) / 1.055, 2.4);
            out.writeShort((int) Math.round(light * MAX));
        }
    }

    private static void description(DataOutputStream out) throws IOException {
        String name = "sRGB\0";
        ascii(out, "desc");
        out.writeInt(0);
        out.writeInt(name.length());
        ascii(out, name);
        out.write(new byte[4 + 4 + 2 + 1 + 67]); // no other languages
    }

    private static void text(DataOutputStream out, String type, String words) throws IOException {
        ascii(out, type);
        out.writeInt(0);
        ascii(out, words);
    }

    private static void xyz(DataOutputStream out, double... values) throws IOException {
        ascii(out, "XYZ ");
        out.writeInt(0);
        for (double value : values) {
            fixed(out, value);
        }
    }

    private static void fixed(DataOutputStream out, double value) throws IOException {
        out.writeInt((int) Math.round(value * 65536));
    }

    private static void ascii(DataOutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.US_ASCII));
    }

    private interface Writing {
        void to(DataOutputStream out) throws IOException;
    }

    private static byte[] part(Writing writing) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            writing.to(out);
            out.write(new byte[(4 - out.size() % 4) % 4]); // every tag begins on a multiple of four
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
