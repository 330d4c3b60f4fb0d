package kerbfolio.reading;

import java.util.Locale;

/** The key of a record component: {@code asReceived} is written {@code as-received}. */
public final class Kebab {
    private Kebab() {}

    public static String of(String component) {
        return component.replaceAll("([a-z0-9])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
    }
}
