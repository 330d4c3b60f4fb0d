package kerbfolio.pdf;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The structure of a finished PDF, as whoever hears it gets it. */
record Structure(PdfDictionary element) {
    static Structure of(Pdf pdf) {
        try (PdfReader reader = Paper.open(pdf)) {
            PdfDictionary root = reader.getCatalog().getAsDict(PdfName.STRUCTTREEROOT);
            return kids(root).stream()
                    .map(kid -> new Structure((PdfDictionary) kid))
                    .findFirst()
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<PdfObject> kids(PdfDictionary element) {
        PdfObject inside = PdfReader.getPdfObject(element.get(PdfName.K));
        var kids = new ArrayList<PdfObject>();
        if (inside instanceof PdfArray several) {
            several.getElements().forEach(kid -> kids.add(PdfReader.getPdfObject(kid)));
        } else if (inside != null) {
            kids.add(inside);
        }
        return kids;
    }

    /** Types in brackets of their parents; a dot for each piece of painted content, an @ for each place to press. */
    String outline() {
        String inside = kids(element).stream().map(Structure::outline).collect(Collectors.joining(" "));
        return element.getAsName(PdfName.S).toString().substring(1) + "(" + inside + ")";
    }

    private static String outline(PdfObject kid) {
        if (kid instanceof PdfDictionary below && below.contains(PdfName.S)) {
            return new Structure(below).outline();
        }
        return kid instanceof PdfDictionary below && below.contains(PdfName.OBJ) ? "@" : ".";
    }

    /** The elements of one type, in reading order. */
    List<Structure> all(String type) {
        var found = new ArrayList<Structure>();
        if (element.getAsName(PdfName.S).equals(new PdfName(type))) {
            found.add(this);
        }
        for (PdfObject kid : kids(element)) {
            if (kid instanceof PdfDictionary below && below.contains(PdfName.S)) {
                found.addAll(new Structure(below).all(type));
            }
        }
        return found;
    }

    /** What is said of an element in words. */
    String said(PdfName key) {
        return element.getAsString(key).toUnicodeString();
    }

    /** One of its attributes. */
    String attribute(String key) {
        return element.getAsDict(PdfName.A).get(new PdfName(key)).toString();
    }
}
