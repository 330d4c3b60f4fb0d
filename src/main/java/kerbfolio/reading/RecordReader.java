package kerbfolio.reading;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Text files to records, in three passes: text to places, places to records, and what the records mean together. */
public final class RecordReader {
    private RecordReader() {}

    /** Reads a file of one record, YAML unless its name ends in {@code .json}. */
    public static <T extends Record> Parsed<T> read(String name, byte[] bytes, Class<T> type) throws Complaints {
        return read(name, bytes, type, (value, complaints) -> {});
    }

    /** Reads a file of one record and examines what it means; all complaints come at once. */
    public static <T extends Record> Parsed<T> read(
            String name, byte[] bytes, Class<T> type, Meaning<? super T> meaning) throws Complaints {
        if (bytes.length > Tokens.MOST_BYTES) {
            throw tooLarge(name);
        }
        Text text = Text.of(name, bytes);
        Tokens.Tree tree = Tokens.tree(text);
        Places places = new Places(text, tree.root());
        var complaints = new ComplaintBook(text, places, tree.complaints());
        T value = new Binder(complaints).bind(tree.root(), type);
        if (value != null) {
            meaning.examine(value, complaints);
        }
        complaints.throwIfAny();
        if (value == null) {
            throw new IllegalStateException("nothing read and nothing complained of");
        }
        return new Parsed<>(value, places);
    }

    /**
     * A file as maps, lists and texts, for what another version of the program wrote with keys this one does not know.
     * Nothing at all is an empty text.
     */
    public static Object loose(String name, byte[] bytes) throws Complaints {
        if (bytes.length > Tokens.MOST_BYTES) {
            throw tooLarge(name);
        }
        Tokens.Tree tree = Tokens.tree(Text.of(name, bytes));
        if (!tree.complaints().isEmpty()) {
            throw new Complaints(tree.complaints());
        }
        return tree.root().loose();
    }

    /** The bytes of a file, never more of it than a job file may hold. */
    public static byte[] bytes(Path file) throws Complaints, IOException {
        String name = String.valueOf(file.getFileName());
        if (Files.size(file) > Tokens.MOST_BYTES) {
            throw tooLarge(name);
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(Tokens.MOST_BYTES + 1);
            if (bytes.length > Tokens.MOST_BYTES) {
                throw tooLarge(name);
            }
            return bytes;
        }
    }

    private static Complaints tooLarge(String name) {
        return new Complaints(List.of(new Complaint(
                name,
                1,
                1,
                "",
                "the file is larger than " + Tokens.MOST_BYTES / 1_000_000
                        + " MB; keep pictures and papers in files beside it")));
    }
}
