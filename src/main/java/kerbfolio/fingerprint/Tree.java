package kerbfolio.fingerprint;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder with all that is below it. */
public final class Tree {
    private Tree() {}

    /** Everything in the order it can be deleted; a link is one thing, wherever it leads. */
    public static List<Path> leavesFirst(Path root) throws IOException {
        try (Stream<Path> walk = Files.walk(root)) {
            return walk.sorted(Comparator.reverseOrder()).toList();
        }
    }
}
