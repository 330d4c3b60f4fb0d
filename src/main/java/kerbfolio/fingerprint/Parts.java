package kerbfolio.fingerprint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import kerbfolio.pdf.PdfFile;
import kerbfolio.pdf.UnreadablePdf;
import kerbfolio.reading.Quoted;

/** Which part of a PDF is not as it was issued, as far as that can be told. */
final class Parts {
    private static final int MOST_PAGES = 10;

    private final PdfFile given;
    private final PdfFile issued;
    private final List<String> differing = new ArrayList<>();

    private Parts(PdfFile given, PdfFile issued) {
        this.given = given;
        this.issued = issued;
    }

    /** One sentence for each part that differs, and never none: the bytes are known to differ. */
    static List<String> differing(PdfFile opened, byte[] given, byte[] issued) throws UnreadablePdf {
        int at = Arrays.mismatch(given, issued);
        if (at == issued.length) {
            return List.of("the document as issued stands unchanged at the beginning, and " + (given.length - at)
                    + " bytes were added behind it, such as a note or a signature");
        }
        try (PdfFile again = PdfFile.open(issued)) {
            var parts = new Parts(opened, again);
            parts.files();
            parts.pages();
            parts.properties();
            if (parts.differing.isEmpty()) {
                return List.of("no file inside, page or property differs, but the file itself does, from byte "
                        + (at + 1) + " of " + given.length + " on");
            }
            return parts.differing;
        }
    }

    private void files() {
        Set<String> names = new TreeSet<>(given.names());
        names.addAll(issued.names());
        for (String name : names) {
            if (!given.names().contains(name)) {
                differing.add("the file " + Quoted.of(name) + " is not inside any more");
            } else if (!issued.names().contains(name)) {
                differing.add("a file " + Quoted.of(name) + " was put inside");
            } else {
                compare(name);
            }
        }
    }

    private void compare(String name) {
        try {
            if (!Arrays.equals(given.attachment(name), issued.attachment(name))) {
                differing.add((name.equals(Issued.WORKBOOK) ? "the workbook inside" : "the file " + name + " inside")
                        + " is not the one that was issued");
            }
        } catch (UnreadablePdf e) {
            differing.add("the file " + name + " inside " + e.getMessage());
        }
    }

    private void pages() throws UnreadablePdf {
        if (given.pages() != issued.pages()) {
            differing.add("it has " + given.pages() + " pages and was issued with " + issued.pages());
            return;
        }
        int found = 0;
        for (int page = 1; page <= given.pages(); page++) {
            String difference = page(page);
            if (!difference.isEmpty() && ++found <= MOST_PAGES) {
                differing.add(difference);
            }
        }
        if (found > MOST_PAGES) {
            differing.add("and " + (found - MOST_PAGES) + " more pages");
        }
    }

    private String page(int page) throws UnreadablePdf {
        String words = issued.words(page);
        byte[] drawing = issued.drawing(page);
        byte[][] pictures = issued.pictures(page);
        try {
            if (!words.equals(given.words(page))) {
                return "the text of page " + page + " differs";
            }
            if (!Arrays.equals(drawing, given.drawing(page))) {
                return "what is drawn on page " + page + " differs";
            }
            return Arrays.deepEquals(pictures, given.pictures(page)) ? "" : "a picture on page " + page + " differs";
        } catch (UnreadablePdf e) {
            return "page " + page + " " + e.getMessage();
        }
    }

    private void properties() throws UnreadablePdf {
        if (!given.properties().equals(issued.properties())) {
            differing.add("the properties of the document (title, dates, program) differ");
        }
    }
}
