package kerbfolio.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import kerbfolio.fingerprint.Tree;

/**
 * Everything that changes the disk while a dossier is written, one step after another.
 *
 * @param step told before each step; what happens if a run ends there can be tried
 */
record Disk(Runnable step) {
    void createDirectory(Path folder) throws IOException {
        step.run();
        Files.createDirectory(folder);
    }

    void write(Path file, byte[] content) throws IOException {
        step.run();
        Files.write(file, content);
    }

    void move(Path from, Path to) throws IOException {
        step.run();
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    /** A file, or a folder with all that is below it, if it is there. */
    void delete(Path path) throws IOException {
        if (!Files.exists(path)) {
            return;
        }
        for (Path each : Tree.leavesFirst(path)) {
            step.run();
            Files.deleteIfExists(each);
        }
    }
}
