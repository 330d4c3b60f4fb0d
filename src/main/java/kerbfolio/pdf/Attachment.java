package kerbfolio.pdf;

import java.util.function.Supplier;

/**
 * A file that travels inside the PDF.
 *
 * @param name file name, as seen from the job file
 * @param mediaType for example {@code application/yaml}
 * @param relation what it is to the document
 * @param description one line for the reader's list of attachments
 * @param content gives the file itself, which must not be changed afterwards; asked once, when the pages are done, so that
 *     it may be written meanwhile
 */
public record Attachment(
        String name, String mediaType, Relation relation, String description, Supplier<byte[]> content) {
    /** A file that is at hand. */
    public Attachment(String name, String mediaType, Relation relation, String description, byte[] content) {
        this(name, mediaType, relation, description, () -> content);
    }

    /** What an attached file is to the document, of the words this program needs (ISO 19005-3:2012, annex E; key AFRelationship). */
    public enum Relation {
        /** The document was made from it. */
        SOURCE("Source"),
        /** It holds the figures of a table or drawing. */
        DATA("Data"),
        /** It adds to the document. */
        SUPPLEMENT("Supplement");

        private final String word;

        Relation(String word) {
            this.word = word;
        }

        /** The word the PDF uses. */
        @Override
        public String toString() {
            return word;
        }
    }
}
