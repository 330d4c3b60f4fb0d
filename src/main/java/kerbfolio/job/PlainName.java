package kerbfolio.job;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How a file may be called that travels inside the dossier by the name the job gives it: so that any machine can take it
 * out again by that name, below one folder, and it stands for no file of the dossier.
 */
public final class PlainName {
    /** What the program itself puts into a dossier. */
    private static final Set<String> OF_THE_DOSSIER =
            Set.of("dossier.pdf", "dossier.xlsx", "findings.json", "fingerprint.json", "record.json");

    private static final Set<String> NO_NAMES = Set.of("", ".", "..");

    private PlainName() {}

    /** What is wrong with a name, folders before it and {@code /} between, fit to stand after it; best nothing. */
    public static Optional<String> objection(String name) {
        if (name.chars().anyMatch(Character::isISOControl)) {
            return Optional.of("holds a tab or another character nobody sees; rename the file");
        }
        for (String sign : List.of(":", "\\")) {
            if (name.contains(sign)) {
                return Optional.of("holds a `" + sign + "`, which not every machine takes; rename the file");
            }
        }
        if (OF_THE_DOSSIER.contains(name)) {
            return Optional.of("is what a file of the dossier is called; rename the file");
        }
        return Arrays.stream(name.split("/", -1)).anyMatch(NO_NAMES::contains)
                ? Optional.of("is no plain name; write it such as `photos/x.jpg`")
                : Optional.empty();
    }
}
