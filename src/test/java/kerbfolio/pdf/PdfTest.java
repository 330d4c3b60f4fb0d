package kerbfolio.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PdfTest {
    @TempDir
    Path folder;

    private Path printed(Attachment... attachments) throws IOException {
        Pdf pdf = Paper.print(Paper.page("", "<p>x</p>"), Paper.facts(attachments), Map.of());
        return Files.write(folder.resolve("dossier.pdf"), pdf.content());
    }

    private static Attachment file(String name, byte[] content) {
        return new Attachment(name, "application/yaml", Attachment.Relation.SOURCE, "The file " + name, content);
    }

    @Test
    void anAttachmentComesBackByteForByte() throws IOException {
        byte[] yaml = "kerbfolio: 1\r\nname: Größe Ω ☐\n".getBytes(StandardCharsets.UTF_8);
        byte[] noise = new byte[100_000];
        new Random(17).nextBytes(noise);
        Path pdf = printed(file("job.yaml", yaml), file("Prüfung Ω.bin", noise), file("empty", new byte[0]));
        assertArrayEquals(yaml, Pdf.attachment(pdf, "job.yaml").orElseThrow());
        assertArrayEquals(noise, Pdf.attachment(pdf, "Prüfung Ω.bin").orElseThrow());
        assertArrayEquals(new byte[0], Pdf.attachment(pdf, "empty").orElseThrow());
    }

    @Test
    void anAttachmentThatIsNotThereIsNothing() throws IOException {
        assertEquals(Optional.empty(), Pdf.attachment(printed(), "job.yaml"));
        assertEquals(Optional.empty(), Pdf.attachment(printed(file("a", new byte[1])), "job.yaml"));
    }

    @Test
    void aFileThatIsNoPdfIsAnInputFault() throws IOException {
        Path other = Files.writeString(folder.resolve("other.pdf"), "not a PDF");
        assertThrows(IOException.class, () -> Pdf.attachment(other, "job.yaml"));
        assertThrows(IOException.class, () -> Pdf.attachment(folder.resolve("none.pdf"), "job.yaml"));
    }

    @Test
    void aDamagedPdfIsAnInputFault() throws IOException {
        byte[] whole = Files.readAllBytes(printed(file("job.yaml", "kerbfolio: 1".getBytes(StandardCharsets.UTF_8))));
        Path half = Files.write(folder.resolve("half.pdf"), Arrays.copyOf(whole, whole.length / 3));
        assertThrows(IOException.class, () -> Pdf.attachment(half, "job.yaml"));
    }
}
