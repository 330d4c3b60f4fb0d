package kerbfolio.fingerprint;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;

/** SHA-256 (FIPS 180-4) in hexadecimal digits, as {@code sha256sum} prints it. */
final class Sha256 {
    private static final int PIECE = 65_536;
    private static final int MOST_FILES = 1000;

    private Sha256() {}

    static String of(byte[] content) {
        return HexFormat.of().formatHex(digest().digest(content));
    }

    static String of(Path file) throws IOException {
        MessageDigest digest = digest();
        try (InputStream in = Files.newInputStream(file)) {
            byte[] piece = new byte[PIECE];
            for (int length = in.read(piece); length >= 0; length = in.read(piece)) {
                digest.update(piece, 0, length);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /**
     * A folder of templates with those below it: the hash of its list of templates and style sheets, each line the file's
     * hash, two spaces and its path from the folder with {@code /} between, in the order of the paths.
     */
    static String ofTemplates(Path given) throws IOException {
        if (!Files.isDirectory(given)) {
            throw new FileSystemException(given.toString(), null, "there is no such folder");
        }
        Path folder = given.toRealPath(); // a walk does not set out from a link
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile).limit(MOST_FILES + 1).toList();
        }
        if (files.size() > MOST_FILES) {
            throw new FileSystemException(
                    given.toString(), null, "holds more than " + MOST_FILES + " files; name the folder of templates");
        }
        var lines = new TreeMap<String, String>();
        for (Path file : files) {
            String name = folder.relativize(file).toString().replace('\\', '/');
            if (name.endsWith(".ftlx") || name.endsWith(".css")) {
                lines.put(name, of(file));
            }
        }
        var list = new StringBuilder();
        lines.forEach(
                (path, hash) -> list.append(hash).append("  ").append(path).append('\n'));
        return of(list.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
