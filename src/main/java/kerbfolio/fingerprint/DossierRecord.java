package kerbfolio.fingerprint;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.JsonWriter;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import kerbfolio.reading.RecordReader;
import org.jspecify.annotations.Nullable;

/**
 * What a dossier was made from, each by its SHA-256; it travels inside the PDF. Of a picture or paper the job names it
 * holds the hash of the original, and of a photograph that of the print as well, which is what the pages show.
 *
 * @param files in the order the job names them, each once
 * @param prints by the name of the photograph
 * @param sets the home set, the program's own rules, the sets for comparison
 */
public record DossierRecord(
        @Must @Means("the program with its version") String program,
        @Must @Means("the job file") Hashed job,
        @Means("files beside it that the job names") List<Hashed> files,
        @Means("its photographs as they are printed") List<Hashed> prints,
        @Means("requirement sets in force") List<HashedSet> sets,

        @Means("hash of the shop's own templates, if they were used") @Nullable
        String templates,

        @Must @Means("hash of the findings") String findings) {
    /** The name it is attached by. */
    public static final String FILE = "record.json";

    private static final int GROUPS = 4;
    private static final int DIGITS = 4;

    /** A file by its hash. */
    public record Hashed(@Must String file, @Must String sha256) {}

    /**
     * A requirement set by its hash.
     *
     * @param own whether it is the shop's own file
     */
    public record HashedSet(
            @Must String set,
            @Nullable String edition,
            @Must boolean own,
            @Must String sha256) {
        /** The name of the shop's own file. */
        String file() {
            return set + ".yaml";
        }

        @Override
        public String toString() {
            return set + (edition == null ? ", no edition given" : ", edition " + edition);
        }
    }

    /** A record without lists is one with empty lists. */
    public DossierRecord {
        files = files == null ? List.of() : List.copyOf(files);
        prints = prints == null ? List.of() : List.copyOf(prints);
        sets = sets == null ? List.of() : List.copyOf(sets);
    }

    /** Reads a record out of a PDF. */
    static DossierRecord read(byte[] json) throws Complaints {
        return RecordReader.read(FILE, json, DossierRecord.class).value();
    }

    /** The same record gives the same bytes. */
    public byte[] json() {
        return JsonWriter.write(this);
    }

    /** The short fingerprint: the first sixteen digits of the hash of {@link #json()}, in groups of four. */
    public String fingerprint() {
        String hash = Sha256.of(json());
        return Stream.iterate(0, at -> at + DIGITS)
                .limit(GROUPS)
                .map(at -> hash.substring(at, at + DIGITS))
                .collect(Collectors.joining("-"));
    }
}
