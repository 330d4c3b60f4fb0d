package kerbfolio.fingerprint;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import kerbfolio.fingerprint.DossierRecord.Hashed;
import kerbfolio.fingerprint.DossierRecord.HashedSet;
import kerbfolio.pdf.PdfFile;
import kerbfolio.pdf.UnreadablePdf;

/**
 * A job file taken out of a PDF, in a folder of its own that is gone when it is closed, with what lay beside it: the
 * shop's own requirement sets, and for each picture or paper the job names what of it is in the PDF, or an empty file in
 * its place.
 */
final class Unpacked implements AutoCloseable {
    private static final String SET_NAME = "[A-Za-z0-9][A-Za-z0-9._-]*";

    private static final long MOST_BYTES = 400_000_000;

    private final Path folder;
    private final Path job;
    private long written;

    private Unpacked(Path folder, Path job) {
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
        try {
            Path path = Path.of(name);
            return !name.contains("\\")
                    && !name.contains(":")
                    && !path.isAbsolute()
                    && path.equals(path.normalize())
                    && !path.startsWith("..")
                    && !path.toString().isEmpty();
        } catch (InvalidPathException e) {
            return false;
        }
    }

    /** Takes a job out of a PDF; the record is orderly, and what it names by hash was compared. */
    static Unpacked of(PdfFile pdf, DossierRecord record) throws IOException {
        Path folder = Files.createTempDirectory("kerbfolio-prove-");
        var unpacked = new Unpacked(folder, folder.resolve(record.job().file()));
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

    private void write(String name, PdfFile pdf) throws IOException {
        Path file = folder.resolve(name);
        if (!Files.exists(file)) {
            byte[] content = pdf.attachment(name);
            written += content == null ? 0 : content.length;
            if (written > MOST_BYTES) { // many names can stand for one file
                throw new UnreadablePdf("holds more than " + MOST_BYTES / 1_000_000 + " MB; no dossier does");
            }
            Files.createDirectories(file.getParent());
            Files.write(file, content == null ? new byte[0] : content);
        }
    }

    Path job() {
        return job;
    }

    @Override
    public void close() throws IOException {
        List<Path> all;
        try (Stream<Path> walk = Files.walk(folder)) {
            all = walk.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : all) {
            Files.delete(path);
        }
    }
}
