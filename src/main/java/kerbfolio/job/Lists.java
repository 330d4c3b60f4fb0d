package kerbfolio.job;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A list key that is left out is an empty list. */
final class Lists {
    private Lists() {}

    static <T> List<T> orEmpty(@Nullable List<T> list) {
        return list == null ? List.of() : List.copyOf(list);
    }
}
