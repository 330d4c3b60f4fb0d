package kerbfolio.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** A dossier's folder: written beside its place and moved there in one step, so that it is whole or not there. */
final class IssuedFolder {
    private IssuedFolder() {}

    /**
     * Writes the files.
     *
     * @return false if the folder held exactly these files already
     * @throws FileAlreadyExistsException if it holds others and they may not be replaced
     */
    static boolean write(Path folder, Map<String, byte[]> files, boolean replace) throws IOException {
        if (Files.exists(folder)) {
            if (holds(folder, files)) {
                return false;
            }
            foreign(folder, files);
            if (!replace) {
                throw new FileAlreadyExistsException(
                        folder.toString(),
                        null,
                        "was issued before with other content; raise the revision, or --replace");
            }
        }
        Path parent = folder.toAbsolutePath().getParent();
        Files.createDirectories(parent);
        // A temporary directory of the system would be closed to everybody else for good.
        Path fresh = Files.createDirectory(folder.resolveSibling(".issue-" + UUID.randomUUID()));
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Files.write(fresh.resolve(file.getKey()), file.getValue());
            }
            if (Files.exists(folder)) {
                Path old = fresh.resolveSibling(fresh.getFileName() + "-old");
                Files.move(folder, old, StandardCopyOption.ATOMIC_MOVE);
                try {
                    Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
                } catch (IOException e) {
                    Files.move(old, folder, StandardCopyOption.ATOMIC_MOVE);
                    throw e;
                }
                delete(old);
            } else {
                Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
            }
        } finally {
            delete(fresh);
        }
        return true;
    }

    /** What somebody else put there, such as a signed scan, is never taken away with the old revision. */
    private static void foreign(Path folder, Map<String, byte[]> files) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            Optional<Path> other = all.filter(path -> !files.containsKey(String.valueOf(path.getFileName())))
                    .findFirst();
            if (other.isPresent()) {
                throw new FileAlreadyExistsException(
                        folder.toString(),
                        null,
                        "holds " + other.get().getFileName()
                                + ", which is not of this program; move it or raise the revision");
            }
        }
    }

    private static boolean holds(Path folder, Map<String, byte[]> files) throws IOException {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            try {
                if (!Arrays.equals(Files.readAllBytes(folder.resolve(file.getKey())), file.getValue())) {
                    return false;
                }
            } catch (NoSuchFileException missing) {
                return false;
            }
        }
        return true;
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            List<Path> all;
            try (Stream<Path> walk = Files.walk(folder)) {
                all = walk.sorted(Comparator.reverseOrder()).toList();
            }
            for (Path path : all) {
                Files.delete(path);
            }
        }
    }
}
