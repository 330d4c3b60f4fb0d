package kerbfolio.check;

import java.util.Arrays;
import java.util.Locale;

/** The trades of a conversion, in the order a dossier prints them; one package of checks each. */
public enum Trade {
    WEIGHT("weight"),
    HIGHVOLTAGE("high voltage"),
    FUNCTION("function tests"),
    LOWVOLTAGE("low voltage"),
    COOLING("cooling"),
    BRAKES("brakes"),
    MOUNTING("mounting"),
    LIFTING("lifting"),
    DRIVE("drive"),
    RECORDS("records");

    private final String words;

    Trade(String words) {
        this.words = words;
    }

    /** As it stands in a requirement set and as the name of its package. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** A trade's key in words; any other text as it is. */
    public static String words(String key) {
        return Arrays.stream(values())
                .filter(trade -> trade.key().equals(key))
                .map(Trade::toString)
                .findFirst()
                .orElse(key);
    }

    static Trade ofPackage(String name) {
        String last = name.substring(name.lastIndexOf('.') + 1);
        return Arrays.stream(values())
                .filter(trade -> trade.key().equals(last))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no trade is called " + last));
    }

    @Override
    public String toString() {
        return words;
    }
}
