package kerbfolio.cli;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One run's claim on a dossier's folder: a locked file beside it, with room for what is being written and for what is
 * replaced. The system lets the lock go when a run ends, however it ends; so a claim nobody holds is of a run that died, and
 * what it left is cleared away by the next.
 */
final class Claim implements AutoCloseable {
    private static final String UUID_FORM = "[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}";

    private final Path folder;
    private final String name;
    private final FileChannel channel;
    private final Disk disk;

    private Claim(Path folder, String name, FileChannel channel, Disk disk) {
        this.folder = folder;
        this.name = name;
        this.channel = channel;
        this.disk = disk;
    }

    /**
     * Claims a folder, and clears away what runs that died have left.
     *
     * @throws FileSystemException if another run is writing it
     */
    static Claim on(Path folder, Disk disk) throws IOException {
        Claim claim = null;
        while (claim == null) {
            claim = taken(folder, disk);
        }
        try {
            claim.clearDead();
            return claim;
        } catch (IOException | RuntimeException e) {
            claim.close();
            throw e;
        }
    }

    /** Null if another run took the file for one left behind, in the moment before it was locked. */
    private static @Nullable Claim taken(Path folder, Disk disk) throws IOException {
        String name = "." + folder.getFileName() + "." + UUID.randomUUID();
        Path file = folder.resolveSibling(name + ".lock");
        FileChannel channel = open(file, folder);
        if (locked(channel) && Files.exists(file)) {
            return new Claim(folder, name, channel, disk);
        }
        channel.close();
        return null;
    }

    private static FileChannel open(Path file, Path folder) throws IOException {
        try {
            return FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileSystemException e) {
            String reason = e.getReason() == null ? "the folder it belongs into may not be written" : e.getReason();
            var said = new FileSystemException(folder.toString(), null, "could not be written: " + reason);
            said.initCause(e);
            throw said;
        }
    }

    private static boolean locked(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException e) { // held within this program
            return false;
        }
    }

    /** Where the dossier is written. */
    Path fresh() {
        return beside(name, ".new");
    }

    /** Where the dossier it replaces waits. */
    Path old() {
        return beside(name, ".old");
    }

    private Path beside(String claim, String ending) {
        return folder.resolveSibling(claim + ending);
    }

    private void clearDead() throws IOException {
        Pattern form = Pattern.compile("(\\." + Pattern.quote(String.valueOf(folder.getFileName())) + "\\." + UUID_FORM
                + ")\\.(lock|new|old)");
        List<String> others;
        try (Stream<Path> all = Files.list(folder.toAbsolutePath().getParent())) {
            others = all.map(path -> form.matcher(String.valueOf(path.getFileName())))
                    .filter(Matcher::matches)
                    .map(found -> found.group(1))
                    .filter(other -> !other.equals(name))
                    .distinct()
                    .toList();
        }
        for (String other : others) {
            try (FileChannel left = FileChannel.open(beside(other, ".lock"), StandardOpenOption.WRITE)) {
                if (!locked(left)) {
                    throw new FileSystemException(
                            folder.toString(), null, "is being written by another run; let it finish, then run again");
                }
                clear(other);
            } catch (NoSuchFileException finished) {
                clear(other);
            }
        }
    }

    /** An earlier dossier beside its place is put back if nothing took its place; it is never half there by that name. */
    private void clear(String claim) throws IOException {
        Path old = beside(claim, ".old");
        Path fresh = beside(claim, ".new");
        if (Files.exists(old) && !Files.exists(folder)) {
            disk.move(old, folder);
        }
        disk.delete(fresh);
        if (Files.exists(old)) {
            disk.move(old, fresh);
            disk.delete(fresh);
        }
        disk.delete(beside(claim, ".lock"));
    }

    @Override
    public void close() throws IOException {
        try {
            clear(name);
        } finally {
            channel.close();
        }
    }
}
