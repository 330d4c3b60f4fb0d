package kerbfolio.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers written one by one and as runs: {@code 1-32, 34}.
 *
 * @param all each once
 */
public record Numbers(NavigableSet<Integer> all) {
    /** More than any car has of what is numbered. */
    static final int MOST = 10_000;

    private static final Pattern RUN = Pattern.compile("([0-9]{1,5})(?:\\s*[-\u2013]\\s*([0-9]{1,5}))?");

    public Numbers {
        all = Collections.unmodifiableNavigableSet(new TreeSet<>(all));
    }

    /**
     * Reads them.
     *
     * @throws IllegalArgumentException with a message fit to be shown
     */
    public static Numbers of(String text) {
        var all = new TreeSet<Integer>();
        for (String run : text.split(",", -1)) {
            Matcher matcher = RUN.matcher(run.strip());
            if (!matcher.matches()) {
                throw new IllegalArgumentException("is no list of numbers; write runs and numbers such as 1-32, 34");
            }
            int first = Integer.parseInt(matcher.group(1));
            int last = matcher.group(2) == null ? first : Integer.parseInt(matcher.group(2));
            if (first < 1 || last < first || last > MOST) {
                throw new IllegalArgumentException(
                        "counts from 1 upwards; `" + run.strip() + "` does not, or reaches beyond " + MOST);
            }
            for (int number = first; number <= last; number++) {
                all.add(number);
            }
        }
        return new Numbers(all);
    }

    public static Numbers none() {
        return new Numbers(new TreeSet<>());
    }

    /** These and others. */
    public Numbers with(Numbers others) {
        var both = new TreeSet<>(all);
        both.addAll(others.all);
        return new Numbers(both);
    }

    /** Those from 1 to the last that are not among these. */
    public Numbers missingUpTo(int last) {
        var missing = new TreeSet<Integer>();
        for (int number = 1; number <= last; number++) {
            if (!all.contains(number)) {
                missing.add(number);
            }
        }
        return new Numbers(missing);
    }

    /** As runs again; {@code none} where there are none. */
    @Override
    public String toString() {
        var runs = new ArrayList<String>();
        for (Integer first : all) {
            if (!all.contains(first - 1)) {
                int last = first;
                while (all.contains(last + 1)) {
                    last++;
                }
                runs.add(first == last ? first.toString() : first + "\u2013" + last);
            }
        }
        return runs.isEmpty() ? "none" : String.join(", ", runs);
    }
}
