package kerbfolio.pdf;

import java.util.List;

/** A finished document: the file, and what a reader of the program's output should be told about it. */
public final class Pdf {
    private final byte[] content;
    private final List<String> complaints;

    Pdf(byte[] content, List<String> complaints) {
        this.content = content;
        this.complaints = List.copyOf(complaints);
    }

    /** The file. */
    public byte[] content() {
        return content.clone();
    }

    /** What could not be printed as written: characters no font has, faults of the style sheet. Best none. */
    public List<String> complaints() {
        return complaints;
    }
}
