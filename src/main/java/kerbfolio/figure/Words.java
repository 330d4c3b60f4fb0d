package kerbfolio.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Sentences of which some may have nothing to say. */
final class Words {
    /** Letters that surely fit beside each other across a figure, at the smallest type. */
    static final int FULL = 124;

    private Words() {}

    /** Words on as many lines as they need, broken between words where there is one. */
    static List<String> broken(String words, int letters) {
        var lines = new ArrayList<String>();
        String rest = Pen.clean(words);
        while (rest.length() > letters) {
            int space = rest.lastIndexOf(' ', letters);
            int end = space <= letters / 2 ? letters : space;
            lines.add(rest.substring(0, end));
            rest = rest.substring(end).strip();
        }
        lines.add(rest);
        return lines;
    }

    static String sentences(String... sentences) {
        return joined(" ", sentences);
    }

    /** What is not empty. */
    static String joined(String between, String... words) {
        return Stream.of(words).filter(each -> !each.isEmpty()).collect(Collectors.joining(between));
    }
}
