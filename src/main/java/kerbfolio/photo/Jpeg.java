package kerbfolio.photo;

import java.util.Set;

/** What a JPEG file is made of (ITU-T T.81, annex B). */
final class Jpeg {
    private static final int START_OF_IMAGE = 0xFFD8;
    private static final int END_OF_IMAGE = 0xFFD9;
    private static final int START_OF_SCAN = 0xFFDA;
    private static final int BASELINE_FRAME = 0xFFC0;

    /** JFIF, quantization and Huffman tables, restart interval, baseline frame. */
    private static final Set<Integer> NEEDED = Set.of(0xFFE0, 0xFFDB, 0xFFC4, 0xFFDD, BASELINE_FRAME);

    /** Where the number of components stands in a frame, from its marker. */
    private static final int COMPONENTS = 9;

    private Jpeg() {}

    /**
     * Whether a file is a baseline JPEG in grey or three colours and nothing else: no marker before the picture's own data
     * but those it needs, and nothing after its end.
     */
    static boolean isBare(byte[] file) {
        if (file.length < 4 || word(file, 0) != START_OF_IMAGE || word(file, file.length - 2) != END_OF_IMAGE) {
            return false;
        }
        int at = 2;
        while (at + COMPONENTS < file.length && NEEDED.contains(word(file, at))) {
            if (word(file, at) == BASELINE_FRAME && file[at + COMPONENTS] != 1 && file[at + COMPONENTS] != 3) {
                return false;
            }
            at += 2 + word(file, at + 2);
        }
        return at + 2 <= file.length && word(file, at) == START_OF_SCAN && isOneScan(file, at + 2);
    }

    /** In the data of a scan only a stuffed zero or a restart follows 0xFF (B.1.1.5); any other marker ends it. */
    private static boolean isOneScan(byte[] file, int from) {
        for (int at = from; at < file.length - 2; at++) {
            int next = file[at + 1] & 0xFF;
            boolean isMarker = (file[at] & 0xFF) == 0xFF && next != 0 && next != 0xFF && (next < 0xD0 || next > 0xD7);
            if (isMarker) {
                return false;
            }
        }
        return true;
    }

    private static int word(byte[] file, int at) {
        return ((file[at] & 0xFF) << Byte.SIZE) | (file[at + 1] & 0xFF);
    }
}
