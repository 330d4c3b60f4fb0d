package kerbfolio.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Test;

class PdfFileTest {
    private static byte[] printed(Attachment... attachments) {
        return Paper.print(Paper.page("", "<p>x</p>"), Paper.facts(attachments), Map.of())
                .content();
    }

    private static Attachment file(String name, byte[] content) {
        return new Attachment(name, "application/yaml", Attachment.Relation.SOURCE, "The file " + name, content);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static String refusal(byte[] content) {
        return assertThrows(UnreadablePdf.class, () -> PdfFile.open(content)).getMessage();
    }

    @Test
    void anAttachmentComesBackByteForByte() throws IOException {
        byte[] yaml = "kerbfolio: 1\r\nname: Größe Ω ☐\n".getBytes(StandardCharsets.UTF_8);
        byte[] noise = new byte[100_000];
        new Random(17).nextBytes(noise);
        try (PdfFile pdf = PdfFile.open(
                printed(file("job.yaml", yaml), file("Prüfung Ω.bin", noise), file("empty", new byte[0])))) {
            assertEquals(Set.of("job.yaml", "Prüfung Ω.bin", "empty"), pdf.names());
            assertArrayEquals(yaml, pdf.attachment("job.yaml"));
            assertArrayEquals(noise, pdf.attachment("Prüfung Ω.bin"));
            assertArrayEquals(new byte[0], pdf.attachment("empty"));
            assertNull(pdf.attachment("job.yam"));
        }
    }

    @Test
    void aPdfWithoutAttachmentsHasNone() throws IOException {
        try (PdfFile pdf = PdfFile.open(printed())) {
            assertEquals(Set.of(), pdf.names());
            assertNull(pdf.attachment("job.yaml"));
        }
    }

    @Test
    void pagesAreReadByTheirNumber() throws IOException {
        try (PdfFile pdf = PdfFile.open(Paper.print("<p>one</p><p style=\"page-break-before: always\">two</p>")
                .content())) {
            assertEquals(2, pdf.pages());
            assertEquals("two", pdf.words(2).strip());
            assertFalse(Arrays.equals(pdf.drawing(1), pdf.drawing(2)));
        }
    }

    /** An attachment is written while the pages are, and fails as it would have failed alone. */
    @Test
    void whatAnAttachmentFailsWithComesThrough() {
        var failure = new IllegalArgumentException("no workbook");
        Supplier<byte[]> none = () -> {
            throw failure;
        };
        var attachment = new Attachment("a", "text/plain", Attachment.Relation.DATA, "a", none);
        assertSame(failure, assertThrows(IllegalArgumentException.class, () -> printed(attachment)));
    }

    @Test
    void aFileIsTakenForAPdfByItsFirstBytes() {
        assertTrue(PdfFile.isPdf(printed()));
        assertTrue(PdfFile.isPdf(bytes("\n%PDF-1.7")));
        assertFalse(PdfFile.isPdf(bytes("PK, a workbook")));
        assertFalse(PdfFile.isPdf(new byte[0]));
    }

    @Test
    void aPdfCutOffIsSaidToBe() {
        byte[] whole = printed(file("job.yaml", bytes("kerbfolio: 1")));
        for (int part = 1; part < 8; part++) {
            assertEquals("is damaged or cut off", refusal(Arrays.copyOf(whole, whole.length * part / 8)));
        }
        assertEquals("is damaged or cut off", refusal(bytes("%PDF-1.7")));
    }

    @Test
    void aDamagedAttachmentIsRefusedAndTheRestIsRead() throws IOException {
        byte[] noise = new byte[5000];
        new Random(1).nextBytes(noise);
        byte[] whole = printed(file("noise", noise), file("note", bytes("note")));
        // What no packing makes smaller lies in the file as it is.
        int at = new String(whole, StandardCharsets.ISO_8859_1)
                .indexOf(new String(Arrays.copyOfRange(noise, 1000, 1020), StandardCharsets.ISO_8859_1));
        assertTrue(at > 0);
        whole[at] ^= 1;
        try (PdfFile pdf = PdfFile.open(whole)) {
            assertEquals(
                    "is damaged",
                    assertThrows(UnreadablePdf.class, () -> pdf.attachment("noise"))
                            .getMessage());
            assertArrayEquals(bytes("note"), pdf.attachment("note"));
        }
    }

    /** Its words are scrambled by a key this program does not have, and no dossier is. */
    @Test
    void anEncryptedPdfIsSaidToBe() {
        String text =
                "%PDF-1.7\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n2 0 obj<</Type/Pages/Count 0/Kids[]>>endobj\n"
                        + "3 0 obj<</Filter/Standard/V 1/R 2/P -4/O<" + "00".repeat(32) + ">/U<" + "00".repeat(32)
                        + ">>>endobj\ntrailer<</Root 1 0 R/Encrypt 3 0 R/ID[<00><00>]>>\n%%EOF";
        assertTrue(refusal(bytes(text)).startsWith("is encrypted; "), refusal(bytes(text)));
    }

    /** A stream of 500 MB of noughts in half a MB, and two hundred of 2 MB each. */
    @Test
    void aFewBytesThatUnpackToAFullDiskAreRefused() throws IOException {
        byte[] bomb = packed(new byte[1_000_000], 500);
        assertTrue(bomb.length < 1_000_000);
        String head =
                "%PDF-1.7\n1 0 obj<</Type/ObjStm/N 1/First 4/Filter/FlateDecode/Length " + bomb.length + ">>stream\r\n";
        String reason = "unpacks to more than 400 MB; no dossier does";
        assertEquals(reason, refusal(joined(bytes(head), bomb, bytes("\nendstream endobj"))));
        var many = new ByteArrayOutputStream();
        many.writeBytes(bytes(head));
        byte[] small = packed(new byte[1_000_000], 2);
        for (int i = 0; i < 201; i++) {
            many.writeBytes(small);
            many.writeBytes(bytes("endstream 2 0 obj<<>>stream\n"));
        }
        assertEquals(reason, refusal(many.toByteArray()));
        assertEquals(
                "unpacks to more than 3 MB",
                assertThrows(UnreadablePdf.class, () -> Inflated.whole(packed(new byte[1_000_000], 4), 3_000_000))
                        .getMessage());
    }

    private static byte[] packed(byte[] piece, int times) throws IOException {
        var out = new ByteArrayOutputStream();
        try (var packing = new DeflaterOutputStream(out)) {
            for (int i = 0; i < times; i++) {
                packing.write(piece);
            }
        }
        return out.toByteArray();
    }

    private static byte[] joined(byte[]... parts) {
        var out = new ByteArrayOutputStream();
        Arrays.stream(parts).forEach(out::writeBytes);
        return out.toByteArray();
    }

    /** Cross-reference sections that name each other as the one before; a page tree that holds itself; brackets without end. */
    @Test
    void aPdfThatLeadsInACircleIsRefused() {
        String first = "xref\n0 1\n0000000000 65535 f \ntrailer<</Size 1/Root 1 0 R/Prev ";
        int second = 9 + first.length() + 12;
        String circle = "%PDF-1.7\n" + first
                + String.format("%010d>>\n", second).substring(0, 13).stripTrailing() + "\n";
        String twice =
                circle + " ".repeat(Math.max(0, second - circle.length())) + first + second + ">>\nstartxref\n9\n%%EOF";
        assertEquals("is damaged or cut off", refusal(bytes(twice)));
        String pages = "%PDF-1.7\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n"
                + "2 0 obj<</Type/Pages/Count 1/Kids[2 0 R]>>endobj\ntrailer<</Root 1 0 R>>\n%%EOF";
        assertTrue(refusal(bytes(pages)).startsWith("is "));
        String deep = "%PDF-1.7\n1 0 obj" + "[".repeat(200_000) + "\nendobj\ntrailer<</Root 1 0 R>>";
        assertTrue(refusal(bytes(deep)).startsWith("is "));
        String wide = "%PDF-1.7\nxref\n2000000000 1\n0000000000 65535 f \ntrailer<</Root 1 0 R>>\nstartxref\n9\n%%EOF";
        assertTrue(refusal(bytes(wide)).startsWith("is "));
    }
}
