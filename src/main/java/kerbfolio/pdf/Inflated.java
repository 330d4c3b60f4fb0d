package kerbfolio.pdf;

import java.io.ByteArrayOutputStream;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** Unpacks what a file from outside has packed, never more of it than is bearable: a few bytes can unpack to a full disk. */
final class Inflated {
    private static final int PIECE = 8192;
    private static final int MEGA = 1_000_000;
    private static final int DEFLATE = 8;
    private static final int CHECK = 31;

    /** The word before every packed piece of a PDF, with the line end after it. */
    private static final byte[] STREAM = {'s', 't', 'r', 'e', 'a', 'm'};

    private Inflated() {}

    /**
     * The whole of a packed piece.
     *
     * @throws UnreadablePdf if it is damaged, or larger than {@code most} bytes
     */
    static byte[] whole(byte[] packed, int most) throws UnreadablePdf {
        var out = new ByteArrayOutputStream();
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(packed);
            byte[] piece = new byte[PIECE];
            while (!inflater.finished()) {
                int length = inflater.inflate(piece);
                if (length == 0 && !inflater.finished()) {
                    throw new UnreadablePdf("is cut off");
                }
                out.write(piece, 0, length);
                if (out.size() > most) {
                    throw new UnreadablePdf("unpacks to more than " + most / MEGA + " MB");
                }
            }
        } catch (DataFormatException e) {
            throw new UnreadablePdf("is damaged", e);
        } finally {
            inflater.end();
        }
        return out.toByteArray();
    }

    /** Refuses a PDF whose packed pieces, all together, unpack to more than {@code most} bytes. Keeps none of them. */
    static void refuseBomb(byte[] pdf, long most) throws UnreadablePdf {
        long left = most;
        for (int at = 0; at + STREAM.length < pdf.length; at++) {
            if (pdf[at] == STREAM[0] && follows(pdf, at)) {
                int from = at + STREAM.length;
                while (from < pdf.length && (pdf[from] == '\r' || pdf[from] == '\n')) {
                    from++;
                }
                left -= measure(pdf, from, left);
                if (left <= 0) {
                    throw new UnreadablePdf("unpacks to more than " + most / MEGA + " MB; no dossier does");
                }
            }
        }
    }

    private static boolean follows(byte[] pdf, int at) {
        for (int i = 1; i < STREAM.length; i++) {
            if (pdf[at + i] != STREAM[i]) {
                return false;
            }
        }
        return true;
    }

    /** How much unpacks from here on, as far as it unpacks at all. */
    private static long measure(byte[] pdf, int from, long most) {
        // The two bytes every packed piece begins with (RFC 1950, section 2.2).
        if (from + 1 >= pdf.length
                || (pdf[from] & 0x0f) != DEFLATE
                || (((pdf[from] & 0xff) << Byte.SIZE) + (pdf[from + 1] & 0xff)) % CHECK != 0) {
            return 0;
        }
        Inflater inflater = new Inflater();
        long unpacked = 0;
        try {
            inflater.setInput(pdf, from, pdf.length - from);
            byte[] piece = new byte[PIECE];
            int length = inflater.inflate(piece);
            while (length > 0 && unpacked <= most) {
                unpacked += length;
                length = inflater.inflate(piece);
            }
        } catch (DataFormatException e) {
            return unpacked; // damaged from here on: whoever reads it will say so
        } finally {
            inflater.end();
        }
        return unpacked;
    }
}
