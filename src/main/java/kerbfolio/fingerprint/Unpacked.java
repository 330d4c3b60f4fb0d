package kerbfolio.fingerprint;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import kerbfolio.fingerprint.DossierRecord.Hashed;
import kerbfolio.fingerprint.DossierRecord.HashedSet;
import kerbfolio.job.PlainName;
import kerbfolio.pdf.PdfFile;
import kerbfolio.pdf.UnreadablePdf;
import kerbfolio.reading.Quoted;

/**
 * A job file taken out of a PDF, in a folder of its own that is gone when it is closed, with what lay beside it: the
 * shop's own requirement sets, and for each picture or paper the job names what of it is in the PDF, or an empty file in
 * its place.
 */
final class Unpacked implements AutoCloseable {
    private static final String SET_NAME = "[A-Za-z0-9][A-Za-z0-9._-]*";

    private static final long MOST_BYTES = 400_000_000;

    private final Path folder;
    private final String job;
    private long written;

    private Unpacked(Path folder, String job) {
        this.folder = folder;
        this.job = job;
    }

    /** Whether every name in a record is one of a file beside the job file, as this program writes them. */
    static boolean isOrderly(DossierRecord record) {
        return isBeside(record.job().file())
                && !record.job().file().contains("/")
                && record.files().stream().allMatch(file -> isBeside(file.file()))
                && record.sets().stream().allMatch(set -> set.set().matches(SET_NAME));
    }

    private static boolean isBeside(String name) {
        return PlainName.objection(name).isEmpty();
    }

    /**
     * Takes a job out of a PDF; the record is orderly, and what it names by hash was compared.
     *
     * @throws UnreadablePdf if it holds a file this machine cannot
     * @throws FileSystemException if there is no folder for temporary files
     */
    static Unpacked of(PdfFile pdf, DossierRecord record) throws IOException {
        var unpacked = new Unpacked(temporary(), record.job().file());
        try {
            unpacked.write(record.job().file(), pdf);
            for (HashedSet set : record.sets()) {
                if (set.own()) {
                    unpacked.write(set.file(), pdf);
                }
            }
            for (Hashed file : record.files()) {
                unpacked.write(file.file(), pdf);
            }
            return unpacked;
        } catch (IOException | RuntimeException e) {
            unpacked.close();
            throw e;
        }
    }

    private static Path temporary() throws FileSystemException {
        try {
            return Files.createTempDirectory("kerbfolio-prove-");
        } catch (IOException e) {
            var said = new FileSystemException(
                    System.getProperty("java.io.tmpdir"),
                    null,
                    "is the folder for temporary files, and the job cannot be unpacked there;"
                            + " make it, or free what keeps it from being written");
            said.initCause(e);
            throw said;
        }
    }

    private void write(String name, PdfFile pdf) throws IOException {
        byte[] content = pdf.attachment(name);
        written += content == null ? 0 : content.length;
        if (written > MOST_BYTES) { // many names can stand for one file
            throw new UnreadablePdf("holds more than " + MOST_BYTES / 1_000_000 + " MB; no dossier does");
        }
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            Files.write(file, content == null ? new byte[0] : content);
        } catch (FileSystemException | InvalidPathException e) {
            String reason =
                    e instanceof FileSystemException file ? file.getReason() : "its locale lacks a letter of it";
            throw new UnreadablePdf("cannot be unpacked: this machine cannot hold the name " + Quoted.of(name)
                    + (reason == null ? "" : ": " + reason));
        }
    }

    Path job() {
        return folder.resolve(job);
    }

    @Override
    public void close() throws IOException {
        for (Path path : Tree.leavesFirst(folder)) {
            Files.delete(path);
        }
    }
}
