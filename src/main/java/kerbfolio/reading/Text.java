package kerbfolio.reading;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** The text of a file, without a byte order mark, and its lines. */
final class Text {
    private final String name;
    private final String text;
    private final int[] lineStarts;

    private Text(String name, String text) {
        this.name = name;
        this.text = text;
        this.lineStarts = lineStarts(text);
    }

    /** Decodes a file; what is no text at all is refused. */
    static Text of(String name, byte[] bytes) throws Complaints {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer decoded = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), decoded, true);
        String whole = decoded.flip().toString();
        Text text = new Text(name, whole.startsWith("\uFEFF") ? whole.substring(1) : whole);
        if (result.isError()) {
            throw text.refusal(
                    text.text.length(),
                    "this is not UTF-8 text from here on; save the file as UTF-8 and read it again");
        }
        int odd = unprintable(text.text);
        if (odd >= 0) {
            throw text.refusal(
                    odd,
                    "character " + codePoint(text.text, odd)
                            + " cannot stand in a text file; is this a job file, written as YAML or JSON?");
        }
        return text;
    }

    String text() {
        return text;
    }

    String name() {
        return name;
    }

    Complaints refusal(int at, String reason) {
        return new Complaints(List.of(complaint(at, "", reason)));
    }

    Complaint complaint(Node node, String reason) {
        return complaint(node.pointer(), node.words(), reason);
    }

    Complaint complaint(int at, String words, String reason) {
        Place place = place(at, at);
        return new Complaint(name, place.line(), place.column(), Quoted.line(words), Quoted.line(reason));
    }

    Place place(int start, int end) {
        int found = Arrays.binarySearch(lineStarts, start);
        int line = found >= 0 ? found : -found - 2;
        int column = text.codePointCount(lineStarts[line], Math.min(start, text.length()));
        return new Place(line + 1, column + 1, start, end);
    }

    /** The first character that neither print nor workbook can hold, or -1. */
    static int unprintable(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean control = Character.isISOControl(c) && c != '\n' && c != '\r' && c != '\t';
            if (control || c >= '\uFFFE' || (Character.isSurrogate(c) && !pairAt(text, i))) {
                return i;
            }
        }
        return -1;
    }

    static String codePoint(String text, int at) {
        return String.format("U+%04X", (int) text.charAt(at));
    }

    private static boolean pairAt(String text, int i) {
        return Character.isHighSurrogate(text.charAt(i))
                ? i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))
                : i > 0 && Character.isHighSurrogate(text.charAt(i - 1));
    }

    private static int[] lineStarts(String text) {
        int[] starts = new int[16];
        int lines = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n'))) {
                starts = lines == starts.length ? Arrays.copyOf(starts, 2 * lines) : starts;
                starts[lines++] = i + 1;
            }
        }
        return Arrays.copyOf(starts, lines);
    }
}
