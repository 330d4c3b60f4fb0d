package kerbfolio.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A dossier's folder: written beside its place and moved there in one step, so that it is whole or not there. A folder
 * that holds an earlier dossier cannot be exchanged for another in one step; a run that ends between the two leaves the
 * earlier one beside its place, and the next run puts it back.
 */
final class IssuedFolder {
    private final Path folder;
    private final Disk disk;

    IssuedFolder(Path folder) {
        this(folder, new Disk(() -> {}));
    }

    IssuedFolder(Path folder, Disk disk) {
        this.folder = folder;
        this.disk = disk;
    }

    /**
     * Writes the files.
     *
     * @return false if the folder held exactly these files already
     * @throws FileAlreadyExistsException if it holds others and they may not be replaced
     */
    boolean write(Map<String, byte[]> files, boolean replace) throws IOException {
        Files.createDirectories(folder.toAbsolutePath().getParent());
        boolean isLink = Files.isSymbolicLink(folder);
        if ((isLink || Files.exists(folder)) && !Files.isDirectory(folder)) {
            throw there(
                    isLink ? "is a link that leads to no folder; remove it" : "is a file and no folder; move it away");
        }
        try (Claim claim = claim(files)) {
            if (claim == null) {
                return false;
            }
            if (Files.exists(folder)) {
                if (holds(files)) {
                    return false;
                }
                if (isLink) {
                    throw there("is a link to a folder; remove it, or give the folder it leads to");
                }
                foreign(files);
                if (!replace) {
                    throw there("was issued before with other content; raise the revision, or --replace");
                }
            }
            fill(claim.fresh(), files);
            exchange(claim);
        }
        return true;
    }

    private FileAlreadyExistsException there(String reason) {
        return new FileAlreadyExistsException(folder.toString(), null, reason);
    }

    /** Null if there is none to be had and none is needed: a folder nobody may write can hold this dossier already. */
    private @Nullable Claim claim(Map<String, byte[]> files) throws IOException {
        try {
            return Claim.on(folder, disk);
        } catch (FileSystemException e) {
            if (holds(files)) {
                return null;
            }
            throw e;
        }
    }

    private void fill(Path fresh, Map<String, byte[]> files) throws IOException {
        try {
            // A temporary directory of the system would be closed to everybody else for good.
            disk.createDirectory(fresh);
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                disk.write(fresh.resolve(file.getKey()), file.getValue());
            }
        } catch (IOException e) {
            String reason = e instanceof FileSystemException file ? file.getReason() : e.getMessage();
            var said = new FileSystemException(
                    folder.toString(), null, "could not be written: " + (reason == null ? "no reason given" : reason));
            said.initCause(e);
            throw said;
        }
    }

    private void exchange(Claim claim) throws IOException {
        if (!Files.exists(folder)) {
            disk.move(claim.fresh(), folder);
            return;
        }
        disk.move(folder, claim.old()); // put back when the claim ends, if nothing takes its place
        disk.move(claim.fresh(), folder);
    }

    /** What somebody else put there, such as a signed scan, is never taken away with the old revision. */
    private void foreign(Map<String, byte[]> files) throws IOException {
        try (Stream<Path> listed = Files.list(folder)) {
            List<Path> all = listed.toList();
            if (all.isEmpty()) {
                throw there("is an empty folder; remove it");
            }
            Optional<Path> other = all.stream()
                    .filter(path ->
                            !Files.isRegularFile(path) || !files.containsKey(String.valueOf(path.getFileName())))
                    .findFirst();
            if (other.isPresent()) {
                throw there("holds " + (Files.isDirectory(other.get()) ? "a folder " : "")
                        + other.get().getFileName()
                        + ", which is not of this program; move it or raise the revision");
            }
        }
    }

    private boolean holds(Map<String, byte[]> files) throws IOException {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            if (!Files.isRegularFile(path) || !Arrays.equals(Files.readAllBytes(path), file.getValue())) {
                return false;
            }
        }
        return true;
    }
}
