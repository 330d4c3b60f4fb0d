package kerbfolio.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kerbfolio.reading.Complaint;
import kerbfolio.reading.Complaints;

/** Job files of a few lines, written into a folder and read from there. */
record Sheet(Path folder) {
    static final String HEAD = """
            kerbfolio: 1
            job: {number: K-7, revision: A, date: 2026-03-31, tier: first}
            """;

    JobFile read(String yaml) throws Complaints, IOException {
        return JobFile.read(Files.writeString(folder.resolve("job.yaml"), yaml));
    }

    /** What is wrong with a file, as a user sees it. */
    List<String> refused(String yaml) {
        return assertThrows(Complaints.class, () -> read(yaml)).list().stream()
                .map(Complaint::toString)
                .toList();
    }

    /** What is wrong with the lines after the head, each complaint at its own mark ▸, which the file does not hold. */
    List<String> complaints(String marked) {
        var complaints = new ArrayList<String>();
        var places = new ArrayList<String>();
        for (String complaint : refused(HEAD + marked.replace("▸", ""))) {
            int split = complaint.indexOf(": ");
            places.add(complaint.substring(0, split));
            complaints.add(complaint.substring(split + 2));
        }
        assertEquals(marks(marked), places, complaints.toString());
        return complaints;
    }

    private static List<String> marks(String marked) {
        var marks = new ArrayList<String>();
        String[] lines = (HEAD + marked).split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            int stripped = 0;
            for (int at = lines[i].indexOf('▸'); at >= 0; at = lines[i].indexOf('▸', at + 1)) {
                marks.add("job.yaml:" + (i + 1) + ":" + (at - stripped++ + 1));
            }
        }
        return marks;
    }
}
