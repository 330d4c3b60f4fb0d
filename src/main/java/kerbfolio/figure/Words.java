package kerbfolio.figure;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Sentences of which some may have nothing to say. */
final class Words {
    private Words() {}

    static String sentences(String... sentences) {
        return joined(" ", sentences);
    }

    /** What is not empty. */
    static String joined(String between, String... words) {
        return Stream.of(words).filter(each -> !each.isEmpty()).collect(Collectors.joining(between));
    }
}
