package kerbfolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop's own templates, right and wrong, as the command issue meets them. */
class ShopTemplatesTest {
    @TempDir
    private Path folder;

    private record Said(int exitCode, String err) {}

    private Said issue(Path templates) {
        var err = new StringWriter();
        int code = Kerbfolio.commandLine()
                .setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(err, true))
                .execute(
                        "issue",
                        "sample-jobs/first.yaml",
                        "--out",
                        folder.resolve("out").toString(),
                        "--templates",
                        templates.toString());
        return new Said(code, err.toString());
    }

    private Path own(String name, String content) throws IOException {
        Path templates = Files.createDirectories(folder.resolve("templates"));
        Files.writeString(templates.resolve(name), content);
        return templates;
    }

    private void assertRefused(String what, Path templates) throws IOException {
        Said said = issue(templates);
        assertEquals(2, said.exitCode(), said.err());
        assertTrue(said.err().contains(what), said.err());
        if (Files.exists(folder.resolve("out"))) {
            try (Stream<Path> left = Files.list(folder.resolve("out"))) {
                assertEquals(0, left.count(), "something was written");
            }
        }
    }

    @Test
    void oneFileOfTheShopsOwnIsTakenAndTheRestIsTheProgramsOwn() throws IOException {
        Said said = issue(own("workshop.ftlx", "<div class=\"part\"><h1 id=\"workshop\">Own</h1></div>"));
        assertEquals(1, said.exitCode(), said.err());
        assertEquals("", said.err());
        assertTrue(Files.exists(folder.resolve("out/0417-1/dossier.pdf")));
    }

    @Test
    void aMistakeInATemplateIsToldWithFileAndLine() throws IOException {
        assertRefused("workshop.ftlx, line 2", own("workshop.ftlx", "<div>\n${workshop.nothing}</div>"));
        assertRefused("workshop.ftlx, line 2", own("workshop.ftlx", "<div>\n<#if>x</div>"));
    }

    @Test
    void aTagThatIsNotClosedIsToldWithTheHeadingAboveIt() throws IOException {
        assertRefused("below the heading \"Own\"", own("workshop.ftlx", "<div class=\"part\"><h1>Own</h1><p>x</div>"));
    }

    @Test
    void aStyleSheetThatFetchesIsToldWhatItAskedFor() throws IOException {
        assertRefused("@import not allowed", own("math.css", "@import url(file:///etc/passwd);"));
        assertRefused(
                "https://elsewhere/a.png", own("math.css", ".part { background-image: url(https://elsewhere/a.png) }"));
    }

    @Test
    void aRuleThatIsNotUnderstoodIsToldAndNothingIsWritten() throws IOException {
        assertRefused("colur", own("math.css", "p { colur: red }"));
    }

    @Test
    void aTemplateWithoutEndIsStopped() throws IOException {
        assertRefused("20 million letters", own("workshop.ftlx", "<#list 1.. as x>${x} and once more </#list>"));
    }

    @Test
    void aFolderThatIsNoneIsToldSo() throws IOException {
        assertRefused("--templates: there is no folder", folder.resolve("nowhere"));
        assertRefused("--templates: there is no folder", Files.writeString(folder.resolve("file"), "x"));
    }
}
