package kerbfolio.job;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import kerbfolio.reading.Quoted;

/** Files that lie beside the job file: never outside its folder, however they are spelt or linked. */
record Attachments(Path folder) {
    private static final long MOST_BYTES = 20_000_000;

    static Attachments beside(Path jobFile) throws IOException {
        return new Attachments(jobFile.resolveSibling("").toAbsolutePath().toRealPath());
    }

    /** What is wrong with a file name as an attachment, and what to write instead. */
    Optional<String> objection(String name) {
        try {
            Path file = find(name);
            if (!Files.isReadable(file)) {
                return Optional.of(Quoted.of(name) + " cannot be read; check its permissions");
            }
            return Files.size(file) > MOST_BYTES
                    ? Optional.of(Quoted.of(name) + " is larger than " + MOST_BYTES / 1_000_000
                            + " MB; attach a smaller copy")
                    : Optional.empty();
        } catch (Refused e) {
            return Optional.of(e.getMessage());
        } catch (IOException e) {
            return Optional.of(Quoted.of(name) + " cannot be read: " + e.getMessage() + "; copy it anew");
        }
    }

    /** The real place of an attachment. */
    Path find(String name) throws IOException {
        Path written = path(name);
        if (written.isAbsolute() || name.startsWith("/") || name.matches("[A-Za-z]:/.*")) {
            throw new Refused(Quoted.of(name) + " is an absolute path; write it from the folder of the job file");
        }
        Path file = folder.resolve(written).normalize();
        if (!file.startsWith(folder)) {
            throw outside(name);
        }
        String plain = folder.relativize(file).toString().replace('\\', '/');
        Optional<String> objection = PlainName.objection(plain);
        if (objection.isPresent()) {
            throw new Refused(Quoted.of(name) + " " + objection.get());
        }
        if (!plain.equals(name)) {
            throw new Refused(Quoted.of(name) + " is a roundabout way to write it; write " + Quoted.of(plain));
        }
        Path real;
        try {
            real = file.toRealPath();
        } catch (AccessDeniedException e) {
            throw new Refused(Quoted.of(name) + " cannot be read; check its permissions");
        } catch (IOException e) {
            throw new Refused(
                    "there is no file " + Quoted.of(name) + " beside the job file; put it there or correct the name");
        }
        if (!real.startsWith(folder)) {
            throw outside(name);
        }
        if (!Files.isRegularFile(real)) {
            throw new Refused(Quoted.of(name) + " is not a file; name one file beside the job file");
        }
        return real;
    }

    private static Path path(String name) throws Refused {
        if (name.isBlank() || name.contains("\\")) {
            throw new Refused(Quoted.of(name) + " names no file; write its name, with / between folders");
        }
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new Refused(Quoted.of(name) + " cannot be the name of a file on this machine; rename the file");
        }
    }

    private static Refused outside(String name) {
        return new Refused(Quoted.of(name) + " lies outside the folder of the job file; copy it into that folder");
    }

    /** A name that is no attachment; the message is fit to be shown. */
    private static final class Refused extends IOException {
        private static final long serialVersionUID = 1L;

        Refused(String reason) {
            super(reason);
        }

        @Override
        public String getMessage() {
            return String.valueOf(super.getMessage());
        }
    }
}
