package kerbfolio.pdf;

import java.time.Instant;
import java.util.List;

/**
 * What a PDF says about itself, all of it from the job and none of it from the machine or the clock.
 *
 * @param title title of the document
 * @param author the shop that answers for it
 * @param subject one line on what it is about
 * @param language language of the text, as in RFC 5646, for example {@code en}
 * @param created the moment the job file gives the document
 * @param seed what names this content and no other (a hash of all that went in); the file identifier is made from it
 * @param attachments the files inside, in the order they are listed
 */
public record DocumentFacts(
        String title,
        String author,
        String subject,
        String language,
        Instant created,
        String seed,
        List<Attachment> attachments) {
    /** Keeps its own list, and no character that cannot be written. */
    public DocumentFacts {
        title = Characters.legal(title);
        author = Characters.legal(author);
        subject = Characters.legal(subject);
        attachments = List.copyOf(attachments);
    }
}
