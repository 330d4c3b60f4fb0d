package kerbfolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A second, unrelated spreadsheet program works every formula out from nothing. Where {@code soffice} is not installed the
 * test is skipped, unless the environment says {@code KERBFOLIO_SOFFICE=required}.
 */
class LibreOfficeTest {
    @ParameterizedTest
    @ValueSource(strings = {"first", "estate", "pickup", "kit-car"})
    void libreOfficeWorksOutWhatJavaDid(String sample, @TempDir Path folder) throws IOException, InterruptedException {
        assumeTrue(isThere() || isRequired(), "LibreOffice is not installed");
        byte[] written = IssuedJob.sample(sample).workbook();
        Opened bare = Opened.of(written);
        Path file = folder.resolve("bare.xlsx");
        Files.write(file, bare.withoutValues());
        assertFalse(bare.formulas().get(0).getCTCell().isSetV(), "the value at issue is still there");
        Path recalculated = recalculate(folder, file);
        Opened.of(written).assertAgrees(Opened.of(Files.readAllBytes(recalculated)));
    }

    private static Path recalculate(Path folder, Path file) throws IOException, InterruptedException {
        Path out = Files.createDirectory(folder.resolve("out"));
        Process process = new ProcessBuilder(
                        "soffice",
                        "--headless",
                        "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                        "--convert-to",
                        "xlsx:Calc MS Excel 2007 XML",
                        "--outdir",
                        out.toString(),
                        file.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("soffice.txt").toFile())
                .start();
        assertEquals(0, process.waitFor(), Files.readString(folder.resolve("soffice.txt")));
        Path recalculated = out.resolve("bare.xlsx");
        assertTrue(Files.exists(recalculated), Files.readString(folder.resolve("soffice.txt")));
        return recalculated;
    }

    private static boolean isRequired() {
        return "required".equals(System.getenv("KERBFOLIO_SOFFICE"));
    }

    private static boolean isThere() {
        String path = System.getenv("PATH");
        return path != null
                && Arrays.stream(path.split(Pattern.quote(File.pathSeparator)))
                        .anyMatch(folder -> Files.isExecutable(Path.of(folder, "soffice")));
    }
}
