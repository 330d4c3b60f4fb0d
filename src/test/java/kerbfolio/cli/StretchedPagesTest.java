package kerbfolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kerbfolio.VeraPdf;
import kerbfolio.fingerprint.Issued;
import kerbfolio.pdf.PdfFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Job files that stretch the page: whatever they say is printed, and nothing runs off the paper or falls out unsaid. */
class StretchedPagesTest {
    private static final String WORD = "unbreakable".repeat(30);

    @TempDir
    private Path folder;

    private Issued issued(String... sections) throws Exception {
        String head =
                "kerbfolio: 1\njob: { number: \"1\", revision: A, date: 2026-10-16, tier: first, home-set: un-ece }\n";
        Path job = folder.resolve("job.yaml");
        Files.writeString(job, head + String.join("\n", sections) + "\n", StandardCharsets.UTF_8);
        return Rerun.of(job).issued();
    }

    private static String words(Issued issued) throws IOException {
        try (PdfFile pdf = PdfFile.open(issued.files().get(Issued.PDF))) {
            var words = new StringBuilder();
            for (int page = 1; page <= pdf.pages(); page++) {
                words.append(pdf.words(page)).append('\n');
            }
            return words.toString();
        }
    }

    @Test
    void aWordLongerThanThePageIsBrokenWhereverItStands() throws Exception {
        Issued issued = issued(
                "vehicle: { description: \"" + WORD + "\", identification: " + WORD + ", plate: " + WORD + " }",
                "parts: [{ id: p, name: " + WORD + ", make: " + WORD + ", model: " + WORD + ", part-number: " + WORD
                        + ", serial: " + WORD + ", firmware: " + WORD + ", mass: 3 kg, mass-from: " + WORD
                        + ", position: { zone: " + WORD + " } }]",
                "removed: [{ id: r, name: " + WORD + ", mass: 3 kg, mass-from: " + WORD + ", fate: " + WORD
                        + ", putting-back: " + WORD + " }]",
                "instruments: [{ id: i, kind: " + WORD + ", serial: " + WORD + ", fixed: 1 kg }]",
                "punch-list: [{ id: \"1\", text: " + WORD + ", area: " + WORD + ", holds: road, owner: shop }]",
                "documents: [{ kind: other, number: " + WORD + ", note: " + WORD + " }]");
        assertEquals(List.of(), issued.complaints());
        VeraPdf.assertArchivalAndAccessible(issued.files().get(Issued.PDF));
    }

    @Test
    void aCaptionOfTenThousandLettersIsPrintedToItsEnd() throws Exception {
        Files.copy(Path.of("sample-jobs/photos/ticket-55210.jpg"), folder.resolve("a.jpg"));
        String caption = "A very long story of a ticket. ".repeat(322) + "The end of it.";
        assertTrue(caption.length() > 9_990, caption.length() + "");
        Issued issued = issued("photos: [{ file: a.jpg, caption: \"" + caption + "\" }]");
        assertEquals(List.of(), issued.complaints());
        assertTrue(words(issued).replaceAll("\\s+", " ").contains("The end of it."), "the last words of the caption");
    }

    @Test
    void lettersNoFaceSetsAreReportedAndSeen() throws Exception {
        Issued issued = issued("vehicle: { description: \"\u5c0f van \u202Edesrever\" }");
        assertEquals(2, issued.complaints().size(), issued.complaints().toString());
        String words = words(issued).replaceAll("\\s+", " ");
        assertTrue(words.contains("[U+5C0F] van desrever"), words.substring(0, 200));
    }
}
