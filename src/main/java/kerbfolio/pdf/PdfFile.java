package kerbfolio.pdf;

import com.lowagie.text.exceptions.BadPasswordException;
import com.lowagie.text.exceptions.InvalidPdfException;
import com.lowagie.text.pdf.PRStream;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNameTree;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A PDF from outside, opened: its attached files and its pages. Nothing in it is trusted; what is damaged, locked or
 * would unpack without end is an {@link UnreadablePdf}.
 */
public final class PdfFile implements AutoCloseable {
    /** A dossier with its pictures stays far below. */
    public static final int MOST_BYTES = 100_000_000;

    private static final long MOST_UNPACKED = 400_000_000;
    private static final int MOST_OF_A_FILE = 100_000_000;
    private static final int MOST_SECTIONS = 500;
    private static final String ENCRYPTED = "is encrypted; a dossier never is. Give the file as it was issued";
    private static final PdfName UNICODE_NAME = new PdfName("UF");

    private final PdfReader reader;
    private final Map<String, PRStream> files = new TreeMap<>();

    private PdfFile(PdfReader reader) {
        this.reader = reader;
    }

    /** Whether the file begins as a PDF does, if with something before it (ISO 32000-1, annex H.3 note 13). */
    public static boolean isPdf(byte[] content) {
        byte[] mark = {'%', 'P', 'D', 'F', '-'};
        for (int at = 0; at + mark.length <= Math.min(content.length, 1024); at++) {
            if (Arrays.equals(content, at, at + mark.length, mark, 0, mark.length)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Opens a PDF.
     *
     * @throws UnreadablePdf if it cannot be read, with the reason
     */
    public static PdfFile open(byte[] content) throws UnreadablePdf {
        Inflated.refuseBomb(content, MOST_UNPACKED);
        return reading(() -> {
            var file = new PdfFile(new Bounded(content));
            if (file.reader.isEncrypted()) {
                throw new UnreadablePdf(ENCRYPTED);
            }
            file.list();
            return file;
        });
    }

    /** The names of the attached files. */
    public Set<String> names() {
        return new TreeSet<>(files.keySet());
    }

    /**
     * Hands an attached file back out; null if the PDF holds none of that name.
     *
     * @throws UnreadablePdf if it is damaged
     */
    public byte @Nullable [] attachment(String name) throws UnreadablePdf {
        PRStream stream = files.get(name);
        if (stream == null) {
            return null;
        }
        return reading(() -> {
            byte[] raw = PdfReader.getStreamBytesRaw(stream);
            PdfObject filter = PdfReader.getPdfObject(stream.get(PdfName.FILTER));
            if (filter == null) {
                return raw;
            }
            if (!PdfName.FLATEDECODE.equals(filter)) {
                throw new UnreadablePdf("is packed in a way this program does not pack");
            }
            return Inflated.whole(raw, MOST_OF_A_FILE);
        });
    }

    /** How many pages it has. */
    public int pages() {
        return reader.getNumberOfPages();
    }

    /** The words of a page, counted from 1. */
    public String words(int page) throws UnreadablePdf {
        return reading(() -> new PdfTextExtractor(reader).getTextFromPage(page));
    }

    /** What is drawn on a page, counted from 1, in the PDF's own operators. */
    public byte[] drawing(int page) throws UnreadablePdf {
        return reading(() -> reader.getPageContent(page));
    }

    /** The pictures of a page, counted from 1, as they are packed, in the order of their names. */
    public byte[][] pictures(int page) throws UnreadablePdf {
        return reading(() -> {
            var pictures = new ArrayList<byte[]>();
            PdfDictionary resources = reader.getPageN(page).getAsDict(PdfName.RESOURCES);
            PdfDictionary objects = resources == null ? null : resources.getAsDict(PdfName.XOBJECT);
            if (objects != null) {
                for (PdfName name : new TreeSet<>(objects.getKeys())) {
                    if (PdfReader.getPdfObject(objects.get(name)) instanceof PRStream picture) {
                        pictures.add(PdfReader.getStreamBytesRaw(picture));
                    }
                }
            }
            return pictures.toArray(byte[][]::new);
        });
    }

    /** Title, dates, program and the like, by their key. */
    public Map<String, String> properties() throws UnreadablePdf {
        return reading(() -> new TreeMap<>(reader.getInfo()));
    }

    @Override
    public void close() {
        reader.close();
    }

    private void list() {
        PdfDictionary names = dictionary(reader.getCatalog().get(PdfName.NAMES));
        PdfDictionary embedded = names == null ? null : dictionary(names.get(PdfName.EMBEDDEDFILES));
        if (embedded == null) {
            return;
        }
        for (Object entry : PdfNameTree.readTree(embedded).values()) {
            PdfDictionary file = dictionary((PdfObject) entry);
            PdfString name =
                    file == null ? null : file.getAsString(file.contains(UNICODE_NAME) ? UNICODE_NAME : PdfName.F);
            PdfDictionary contents = file == null ? null : file.getAsDict(PdfName.EF);
            if (name != null
                    && contents != null
                    && PdfReader.getPdfObject(contents.get(PdfName.F)) instanceof PRStream stream) {
                files.putIfAbsent(name.toUnicodeString(), stream);
            }
        }
    }

    private static @Nullable PdfDictionary dictionary(@Nullable PdfObject object) {
        return PdfReader.getPdfObject(object) instanceof PdfDictionary found ? found : null;
    }

    /** Something the library does with a file that may be anything. */
    private interface Reading<T> {
        T read() throws IOException;
    }

    /** The library meets a faulty file with whatever its code runs into; all of it means the same to whoever gave the file. */
    private static <T> T reading(Reading<T> reading) throws UnreadablePdf {
        try {
            return reading.read();
        } catch (UnreadablePdf e) {
            throw e;
        } catch (BadPasswordException | LinkageError e) { // what unlocks a PDF is no part of this program
            throw new UnreadablePdf(ENCRYPTED, e);
        } catch (IOException | RuntimeException e) {
            throw new UnreadablePdf("is damaged or cut off", e);
        } catch (OutOfMemoryError | StackOverflowError e) {
            throw new UnreadablePdf("is larger or deeper than this program can read", e);
        }
    }

    /** Follows no endless chain of cross-reference sections. */
    private static final class Bounded extends PdfReader {
        private int sections;

        Bounded(byte[] content) throws IOException {
            super(content);
        }

        @Override
        protected PdfDictionary readXrefSection() throws IOException {
            if (++sections > MOST_SECTIONS) {
                throw new InvalidPdfException("cross-reference sections without end");
            }
            return super.readXrefSection();
        }
    }
}
