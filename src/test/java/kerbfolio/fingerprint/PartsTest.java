package kerbfolio.fingerprint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import kerbfolio.JobText;
import kerbfolio.check.RequirementSets;
import kerbfolio.job.JobFile;
import kerbfolio.pdf.PdfFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PartsTest {
    @TempDir
    private Path folder = Path.of("");

    /** A dossier with one photograph of one size, all of one colour. */
    private byte[] pdf(int colour) throws Exception {
        var picture = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 60 * 40; i++) {
            picture.setRGB(i % 60, i / 60, colour);
        }
        assertTrue(ImageIO.write(picture, "jpg", folder.resolve("a.jpg").toFile()));
        JobText job = JobText.blank().add("photos", "{ file: a.jpg }");
        JobFile read = JobFile.read(job.writeTo(folder));
        Inputs inputs = Inputs.of(read, RequirementSets.of(read), job.release(), new Making("Kerbfolio 0", null));
        return Issued.of(job.dossier(), inputs).file(Issued.PDF);
    }

    /** Words and drawing of the page are the same; the picture it shows is another. */
    @Test
    void aPhotographOnAPageIsComparedToo() throws Exception {
        byte[] red = pdf(0xff0000);
        byte[] green = pdf(0x00ff00);
        try (PdfFile given = PdfFile.open(red)) {
            List<String> pages = Parts.differing(given, red, green).stream()
                    .filter(part -> part.contains("page"))
                    .toList();
            assertEquals(1, pages.size(), pages.toString());
            assertTrue(pages.get(0).matches("a picture on page \\d+ differs"), pages.toString());
        }
    }
}
