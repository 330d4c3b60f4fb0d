package kerbfolio.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfString;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import kerbfolio.Sketch;
import kerbfolio.VeraPdf;
import kerbfolio.figure.Figure;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class ArchiveTest {
    private static final Attachment JOB = new Attachment(
            "job.yaml",
            "application/yaml",
            Attachment.Relation.SOURCE,
            "The job file",
            "kerbfolio: 1".getBytes(StandardCharsets.UTF_8));

    private static final Figure PLAN = new Sketch("plan", "A plan of nothing.", canvas -> {
        canvas.drawRect(5, 5, 50, 20);
        canvas.drawString("front ☐", 8, 18);
    });

    /** A document with something of everything the pages use. */
    static Pdf rich() {
        String page = "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>t</title><meta name=\"keywords\""
                + " content=\"k\"/><bookmarks><bookmark name=\"A\" href=\"#a\"/></bookmarks><style>"
                + "@page { @bottom-center { content: 'Page ' counter(page) ' of ' counter(pages) } }"
                + "object { display: block; width: 90pt; height: 40pt } h1 { background: #eee; opacity: 0.5 }"
                + "</style></head><body><h1 id=\"a\">Ω ☐ <b>☑ bold</b> <i>italic</i> 中</h1>"
                + "<p><a href=\"#a\">link</a> <code>code</code></p><table><tr><th>a</th><td>b</td></tr></table>"
                + "<ul><li>x</li></ul><ol><li>y</li></ol>"
                + "<object type=\"figure\" data=\"plan\"></object></body></html>";
        return Paper.print(page, Paper.facts(JOB), Map.of("plan", PLAN));
    }

    @Test
    void theDocumentIsArchivalAndAccessible() throws Exception {
        VeraPdf.assertArchivalAndAccessible(rich().content());
    }

    @Test
    void thePdfIsOfVersionOneSevenAndSpeaksTheJobsLanguage() {
        byte[] content = rich().content();
        assertEquals("%PDF-1.7", new String(content, 0, 8, StandardCharsets.US_ASCII));
        assertEquals("en", Paper.catalog(rich()).getAsString(PdfName.LANG).toUnicodeString());
    }

    @Test
    void datesComeFromTheJobAndNeverFromTheClock() throws IOException {
        try (PdfReader reader = Paper.open(rich())) {
            Map<String, String> facts = reader.getInfo();
            assertEquals("D:20250314150926Z", facts.get("CreationDate"));
            assertEquals("D:20250314150926Z", facts.get("ModDate"));
        }
    }

    @Test
    void theDocumentSaysTheSameOfItselfInBothPlaces() throws Exception {
        try (PdfReader reader = Paper.open(rich())) {
            Map<String, String> facts = reader.getInfo();
            Document xmp = DocumentBuilderFactory.newDefaultInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(reader.getMetadata()));
            assertEquals("Handover <of> job 17 & more", facts.get("Title"));
            assertEquals(facts.get("Title"), word(xmp, "dc:title"));
            assertEquals("Müller's shop", facts.get("Author"));
            assertEquals(facts.get("Author"), word(xmp, "dc:creator"));
            assertEquals("An invented car", facts.get("Subject"));
            assertEquals(facts.get("Subject"), word(xmp, "dc:description"));
            assertEquals("Kerbfolio 0.0-test", facts.get("Producer"));
            assertEquals(facts.get("Producer"), word(xmp, "pdf:Producer"));
            assertEquals(facts.get("Creator"), word(xmp, "xmp:CreatorTool"));
            assertEquals("2025-03-14T15:09:26Z", word(xmp, "xmp:CreateDate"));
            assertEquals("2025-03-14T15:09:26Z", word(xmp, "xmp:ModifyDate"));
            assertEquals("3", word(xmp, "pdfaid:part"));
            assertEquals("A", word(xmp, "pdfaid:conformance"));
            assertEquals("1", word(xmp, "pdfuaid:part"));
            assertFalse(facts.containsKey("Keywords"));
        }
    }

    private static String word(Document xmp, String key) {
        return xmp.getElementsByTagName(key).item(0).getTextContent().strip();
    }

    @Test
    void theIdentifierFollowsTheContentAndNothingElse() throws IOException {
        String page = Paper.page("", "<p>x</p>");
        DocumentFacts facts = Paper.facts();
        var other = new DocumentFacts(
                facts.title(),
                facts.author(),
                facts.subject(),
                facts.language(),
                facts.created(),
                "another seed",
                List.of());
        String first = identifier(Paper.print(page, facts, Map.of()));
        assertEquals(first, identifier(Paper.print(page, facts, Map.of())));
        assertNotEquals(first, identifier(Paper.print(page, other, Map.of())));
    }

    private static String identifier(Pdf pdf) throws IOException {
        try (PdfReader reader = Paper.open(pdf)) {
            var parts = reader.getTrailer().getAsArray(PdfName.ID);
            assertEquals(parts.getPdfObject(0).toString(), parts.getPdfObject(1).toString());
            return ((PdfString) parts.getPdfObject(0)).getBytes().length + " "
                    + java.util.HexFormat.of().formatHex(((PdfString) parts.getPdfObject(0)).getBytes());
        }
    }

    @Test
    void anAttachedFileIsTiedToTheDocumentByItsRelation() throws IOException {
        try (PdfReader reader = Paper.open(rich())) {
            var tied = reader.getCatalog().getAsArray(new PdfName("AF"));
            assertEquals(1, tied.size());
            PdfDictionary file = tied.getAsDict(0);
            assertEquals(new PdfName("Source"), file.get(new PdfName("AFRelationship")));
            PdfDictionary stream = (PdfDictionary)
                    PdfReader.getPdfObject(file.getAsDict(PdfName.EF).get(PdfName.F));
            assertEquals(new PdfName("application/yaml"), stream.get(PdfName.SUBTYPE));
            assertEquals(
                    "D:20250314150926Z",
                    stream.getAsDict(PdfName.PARAMS).get(PdfName.MODDATE).toString());
        }
    }
}
