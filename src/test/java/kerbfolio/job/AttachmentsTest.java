package kerbfolio.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kerbfolio.reading.Complaints;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Attachments lie beside the job file, or below it, and nowhere else. */
class AttachmentsTest {
    @TempDir
    private Path outside;

    private Path folder;
    private Sheet sheet;

    @BeforeEach
    void layOut() throws IOException {
        folder = Files.createDirectories(outside.resolve("job"));
        sheet = new Sheet(folder);
        Files.writeString(outside.resolve("secret.txt"), "secret");
        Files.writeString(folder.resolve("ticket.pdf"), "ticket");
        Files.writeString(Files.createDirectories(folder.resolve("photos")).resolve("a b.jpg"), "photo");
    }

    @Test
    void aFileBesideTheJobFileIsFound() throws Exception {
        JobFile file = sheet.read(Sheet.HEAD + """
                documents:
                  - file: ticket.pdf
                photos:
                  - file: photos/a b.jpg
                punch-list:
                  - {id: 1, text: t, holds: none, closed: {photo: photos/a b.jpg}}
                """);
        assertEquals("photo", Files.readString(file.attachment("photos/a b.jpg")));
        Files.delete(folder.resolve("ticket.pdf"));
        assertThrows(IOException.class, () -> file.attachment("ticket.pdf"));
    }

    @Test
    void aFileOutsideTheFolderIsRefusedHoweverItIsSpelt() throws Exception {
        Files.createSymbolicLink(folder.resolve("link.txt"), outside.resolve("secret.txt"));
        Files.createSymbolicLink(folder.resolve("away"), outside);
        String secret = outside.resolve("secret.txt").toString();
        String shown = secret.length() > 40 ? secret.substring(0, 40) + "…" : secret;
        String lies = "lies outside the folder of the job file; copy it into that folder";
        String absolute = "is an absolute path; write it from the folder of the job file";
        assertEquals(
                List.of(
                        "documents > entry 1 > file: `../secret.txt` " + lies,
                        "documents > entry 2 > file: `photos/../../secret.txt` " + lies,
                        "documents > entry 3 > file: `link.txt` " + lies,
                        "documents > entry 4 > file: `away/secret.txt` " + lies,
                        "documents > entry 5 > file: `" + shown + "` " + absolute,
                        "documents > entry 6 > file: `C:/secret.txt` " + absolute,
                        "documents > entry 7 > file: `..\\secret.txt` names no file; write its name, with"
                                + " / between folders"),
                sheet.complaints("""
                        documents:
                          - file: ▸../secret.txt
                          - file: ▸photos/../../secret.txt
                          - file: ▸link.txt
                          - file: ▸away/secret.txt
                          - file: ▸%s
                          - file: ▸C:/secret.txt
                          - file: ▸..\\secret.txt
                        """.formatted(secret)));
    }

    /** What one machine takes for a name another may not, and the dossier's own files have theirs. */
    @Test
    void aNameIsWrittenPlainlyAndStandsForNoFileOfTheDossier() throws Exception {
        for (String name : List.of("day 1: plate.jpg", "a\tb.jpg", "record.json", "dossier.xlsx")) {
            Files.writeString(folder.resolve(name), "photo");
        }
        String plainly = "is a roundabout way to write it; write `photos/a b.jpg`";
        String dossier = "is what a file of the dossier is called; rename the file";
        assertEquals(
                List.of(
                        "photos > entry 1 > file: `./photos/a b.jpg` " + plainly,
                        "photos > entry 2 > file: `photos//a b.jpg` " + plainly,
                        "photos > entry 3 > file: `photos/../photos/a b.jpg` " + plainly,
                        "photos > entry 4 > file: `day 1: plate.jpg` holds a `:`, which not every machine takes;"
                                + " rename the file",
                        "photos > entry 5 > file: `a b.jpg` holds a tab or another character nobody sees;"
                                + " rename the file",
                        "photos > entry 6 > file: `record.json` " + dossier,
                        "photos > entry 7 > file: `./dossier.xlsx` " + dossier),
                sheet.complaints("""
                        photos:
                          - file: ▸./photos/a b.jpg
                          - file: ▸photos//a b.jpg
                          - file: ▸photos/../photos/a b.jpg
                          - file: ▸"day 1: plate.jpg"
                          - file: ▸"a\\tb.jpg"
                          - file: ▸record.json
                          - file: ▸./dossier.xlsx
                        """));
    }

    @Test
    void aJobFileIsCalledPlainlyToo() throws Exception {
        for (String name : List.of("a:b.yaml", "findings.json")) {
            Path file = Files.writeString(folder.resolve(name), Sheet.HEAD);
            var refused = assertThrows(Complaints.class, () -> JobFile.read(file));
            assertEquals(1, refused.list().get(0).line());
            assertTrue(
                    refused.list().get(0).text().startsWith("the job file's name `" + name + "` "),
                    refused.getMessage());
        }
    }

    @Test
    void whatIsNoSuchFileIsToldWhatToDo() throws Exception {
        try (var sparse = new RandomAccessFile(folder.resolve("film.mp4").toFile(), "rw")) {
            sparse.setLength(20_000_001);
        }
        assertEquals(
                List.of(
                        "photos > entry 1 > file: there is no file `tiket.pdf` beside the job file; put it"
                                + " there or correct the name",
                        "photos > entry 2 > file: `photos` is not a file; name one file beside the job" + " file",
                        "photos > entry 3 > file: `film.mp4` is larger than 20 MB; attach a smaller copy",
                        "punch-list > 1 > closed > photo: there is no file `ticket.pdf/x` beside the job"
                                + " file; put it there or correct the name"),
                sheet.complaints("""
                        photos:
                          - file: ▸tiket.pdf
                          - file: ▸photos
                          - file: ▸film.mp4
                        punch-list:
                          - {id: 1, text: t, holds: none, closed: {photo: ▸ticket.pdf/x}}
                        """));
    }
}
