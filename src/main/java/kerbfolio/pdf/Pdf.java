package kerbfolio.pdf;

import com.lowagie.text.pdf.PRStream;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNameTree;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfString;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A finished document: the file, and what a reader of the program's output should be told about it. */
public final class Pdf {
    private static final PdfName UNICODE_NAME = new PdfName("UF");

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

    /**
     * Hands an attached file back out.
     *
     * @param name the file name it was attached by
     * @return the file, or nothing if the PDF holds none of that name
     * @throws IOException if there is no readable PDF at that place
     */
    public static Optional<byte[]> attachment(Path pdf, String name) throws IOException {
        try (PdfReader reader = new PdfReader(Files.readAllBytes(pdf))) {
            PdfDictionary names = dictionary(reader.getCatalog().get(PdfName.NAMES));
            PdfDictionary files = names == null ? null : dictionary(names.get(PdfName.EMBEDDEDFILES));
            if (files == null) {
                return Optional.empty();
            }
            for (Object entry : PdfNameTree.readTree(files).values()) {
                PdfDictionary file = dictionary((PdfObject) entry);
                if (file != null && name.equals(nameOf(file))) {
                    return content(file);
                }
            }
            return Optional.empty();
        } catch (RuntimeException e) { // the library's way of meeting a damaged file
            throw new IOException("not a readable PDF: " + pdf, e);
        }
    }

    private static @Nullable String nameOf(PdfDictionary file) {
        PdfString name = file.getAsString(file.contains(UNICODE_NAME) ? UNICODE_NAME : PdfName.F);
        return name == null ? null : name.toUnicodeString();
    }

    private static Optional<byte[]> content(PdfDictionary file) throws IOException {
        PdfDictionary embedded = file.getAsDict(PdfName.EF);
        PdfObject stream = embedded == null ? null : PdfReader.getPdfObject(embedded.get(PdfName.F));
        return stream instanceof PRStream bytes ? Optional.of(PdfReader.getStreamBytes(bytes)) : Optional.empty();
    }

    private static @Nullable PdfDictionary dictionary(@Nullable PdfObject object) {
        return PdfReader.getPdfObject(object) instanceof PdfDictionary found ? found : null;
    }
}
