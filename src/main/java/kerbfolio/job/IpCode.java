package kerbfolio.job;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A degree of protection as marked, as far as it says who can reach what is live (IEC 60529, sections 5 and 7; the letter
 * K of vehicles from ISO 20653).
 *
 * @param access what is kept out: 1 the back of a hand, 2 a finger, 3 a tool, 4 and above a wire; empty where the code
 *     speaks of water only
 */
public record IpCode(OptionalInt access) {
    private static final Pattern FORM = Pattern.compile("IP([0-6X])K?([0-9X])K?([ABCD]?)[HMSW]?");
    private static final String LETTERS = "ABCD";

    /** The code a text spells; empty if it spells none. */
    public static Optional<IpCode> of(String text) {
        Matcher matcher = FORM.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int numeral = matcher.group(1).equals("X") ? -1 : Integer.parseInt(matcher.group(1));
        int letter = matcher.group(3).isEmpty() ? -1 : LETTERS.indexOf(matcher.group(3)) + 1;
        int access = Math.max(numeral, letter);
        return Optional.of(new IpCode(access < 0 ? OptionalInt.empty() : OptionalInt.of(access)));
    }

    /** How a numeral from 1 to 4 is marked where nothing is said of dust and water. */
    public static String marked(int access) {
        return "IPXX" + LETTERS.charAt(access - 1);
    }
}
