package kerbfolio.reading;

/** A YAML reader counts whole characters, Java's texts count some of them twice; this turns the one into the other. */
final class Offsets {
    private final int[] table;

    private Offsets(int[] table) {
        this.table = table;
    }

    static Offsets of(String text, boolean countedWhole) {
        int whole = text.codePointCount(0, text.length());
        if (!countedWhole || whole == text.length()) {
            return new Offsets(new int[0]);
        }
        int[] table = new int[whole + 1];
        for (int i = 0, at = 0; i <= whole; i++) {
            table[i] = at;
            at += i < whole ? Character.charCount(text.codePointAt(at)) : 0;
        }
        return new Offsets(table);
    }

    int chars(long counted) {
        return table.length == 0 ? (int) counted : table[(int) Math.min(counted, table.length - 1)];
    }
}
