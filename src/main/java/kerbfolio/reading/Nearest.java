package kerbfolio.reading;

import java.util.Collection;
import java.util.Optional;

/** The known name somebody most likely meant. */
public final class Nearest {
    private Nearest() {}

    /** The known name fewest slips away, if no more than a third of it was mistyped. */
    public static Optional<String> to(String written, Collection<String> known) {
        String best = "";
        int fewest = Integer.MAX_VALUE;
        for (String name : known) {
            int slips = slips(written, name);
            if (slips < fewest) {
                fewest = slips;
                best = name;
            }
        }
        return fewest <= Math.max(1, Math.max(written.length(), best.length()) / 3)
                ? Optional.of(best)
                : Optional.empty();
    }

    /** The end of a complaint: the name meant, or all the names there are. */
    public static String hint(String written, Collection<String> known) {
        return to(written, known)
                .map(name -> "; did you mean `" + name + "`?")
                .orElse(known.isEmpty() ? "" : "; known here: " + String.join(", ", known));
    }

    /** The end of a complaint where there are too many names to list: the name meant, or what to do instead. */
    public static String hint(String written, Collection<String> known, String otherwise) {
        return to(written, known).map(name -> "; did you mean `" + name + "`?").orElse(otherwise);
    }

    /** Letters to insert, leave out, change or swap with their neighbour (Damerau 1964, optimal string alignment). */
    static int slips(String a, String b) {
        if (Math.abs(a.length() - b.length()) > 20 || a.length() > 100) {
            return Integer.MAX_VALUE;
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
