package kerbfolio.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The program says met or not met against a cited figure. What that amounts to in law, others say. */
class WordsTest {
    private static final Pattern PROMISE = Pattern.compile(
            "\\b(compliant|compliance|certified|legal|legally|safe|safely)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern STRING = Pattern.compile("\"(?:[^\"\\\\\\n]|\\\\.)*\"");

    @Test
    void nothingPrintedPromisesWhatNoProgramCan() throws IOException {
        var found = new ArrayList<String>();
        for (String folder : List.of("report-templates", "shared", "sample-jobs", "src/main/resources")) {
            each(folder, (file, text) -> search(file, text, found));
        }
        each("src/main/java", (file, text) -> {
            Matcher strings = STRING.matcher(text);
            while (strings.find()) {
                search(file, strings.group(), found);
            }
        });
        assertEquals(List.of(), found);
    }

    private interface Reader {
        void read(Path file, String text);
    }

    private static void each(String folder, Reader reader) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of(folder))) {
            for (Path file : files.filter(WordsTest::isText).toList()) {
                reader.read(file, Files.readString(file));
            }
        }
    }

    private static boolean isText(Path file) {
        return Files.isRegularFile(file) && !file.toString().endsWith(".jpg");
    }

    private static void search(Path file, String text, List<String> found) {
        Matcher promise = PROMISE.matcher(text);
        if (promise.find()) {
            found.add(file + ": " + promise.group());
        }
    }
}
