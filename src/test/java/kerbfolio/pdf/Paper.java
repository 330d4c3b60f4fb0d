package kerbfolio.pdf;

import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import kerbfolio.figure.Figure;

/** What the tests of this package print on, and how they read it back. */
final class Paper {
    static final Instant JOB_DATE = Instant.parse("2025-03-14T15:09:26Z");

    private static final Renderer RENDERER = new Renderer(Fonts.load(), "Kerbfolio 0.0-test");

    private Paper() {}

    static DocumentFacts facts(Attachment... attachments) {
        return new DocumentFacts(
                "Handover <of> job 17 & more",
                "Müller's shop",
                "An invented car",
                "en",
                JOB_DATE,
                "job 17, revision 2",
                List.of(attachments));
    }

    static String page(String css, String body) {
        return "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>Test</title><style>" + css
                + "</style></head><body>" + body + "</body></html>";
    }

    static Pdf print(String body) {
        return print("", body);
    }

    static Pdf print(String css, String body) {
        return RENDERER.render(page(css, body), facts(), Pictures.NONE);
    }

    static Pdf print(String xhtml, DocumentFacts facts, Map<String, Figure> figures) {
        return RENDERER.render(xhtml, facts, new Pictures(figures, Map.of()));
    }

    static String text(Pdf pdf) {
        try (PdfReader reader = open(pdf)) {
            var extractor = new PdfTextExtractor(reader);
            var text = new StringBuilder();
            for (int page = 1; page <= reader.getNumberOfPages(); page++) {
                text.append(extractor.getTextFromPage(page)).append('\n');
            }
            return text.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The drawing operators of the first page, in clear. */
    static String operators(Pdf pdf) {
        try (PdfReader reader = open(pdf)) {
            return new String(reader.getPageContent(1), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static PdfReader open(Pdf pdf) throws IOException {
        return new PdfReader(pdf.content());
    }

    static PdfDictionary catalog(Pdf pdf) {
        try (PdfReader reader = open(pdf)) {
            return reader.getCatalog();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
