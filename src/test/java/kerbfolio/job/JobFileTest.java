package kerbfolio.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job file as a whole; places are counted by hand. */
class JobFileTest {
    @TempDir
    private Path folder;

    private Sheet sheet;

    @BeforeEach
    void unfold() {
        sheet = new Sheet(folder);
    }

    @Test
    void thirteenFaultsGiveThirteenComplaintsInTheirPlaces() {
        List<String> complaints = sheet.refused("""
                kerbfolio: 1
                job:
                  number: K-7
                  revision: 1
                  date: 2026-03-32
                  tier: frist
                vehicle:
                  wheelbas: 2.6 m
                  odometer: 5 kg
                  seats: four
                instruments:
                  - id: scales
                    fixed: 0.5
                  - id: scales
                weighings:
                  as-delivered:
                    instrument: scalse
                    axles: 1000 kg
                parts:
                  - id: drive-unit
                    mass: -82 kg
                    mass: 82 kg
                  - name: pack
                photos:
                  - file: ../x.jpg
                """);
        assertEquals(
                List.of(
                        "job.yaml:5:9: job > date: `2026-03-32` is not a day of the calendar; write year-month-day, such as"
                                + " 2026-03-31",
                        "job.yaml:6:9: job > tier: `frist` is none of its words, first, inspection, full; did you mean"
                                + " `first`?",
                        "job.yaml:8:3: vehicle > wheelbas: unknown key `wheelbas`; did you mean `wheelbase`?",
                        "job.yaml:9:13: vehicle > odometer: `5 kg` is in kg, which is another kind of unit; write a number"
                                + " and its unit: km, m, mm, in, ft, cm, mi",
                        "job.yaml:10:10: vehicle > seats: `four` is no number; write a bare number, such as 4 or 0.95",
                        "job.yaml:13:12: instruments > scales > fixed: `0.5` has no unit; write a number and its unit, such"
                                + " as 0.5 kg",
                        "job.yaml:14:9: instruments > scales > id: `scales` is the id of two entries; give one another id",
                        "job.yaml:17:17: weighings > as-delivered > instrument: no instrument `scalse`; did you mean"
                                + " `scales`?",
                        "job.yaml:18:12: weighings > as-delivered > axles: takes keys, each on its own line below it:"
                                + " front, rear",
                        "job.yaml:21:11: parts > drive-unit > mass: `-82 kg` is below zero, which this cannot be; write it"
                                + " without the minus sign",
                        "job.yaml:22:5: parts > drive-unit > mass: `mass` stands here twice; keep one of the two",
                        "job.yaml:23:5: parts > entry 2: `id` may not be left out; write `id: …`",
                        "job.yaml:25:11: photos > entry 1 > file: `../x.jpg` lies outside the folder of the job file; copy"
                                + " it into that folder"),
                complaints);
    }

    @Test
    void yamlAndJsonOfTheSameJobAreTheSameJob() throws Exception {
        JobFile yaml = sheet.read("""
                kerbfolio: 1
                job:
                  number: 0042
                  revision: 1.10
                  date: 2026-03-31
                  tier: full
                  compared-with: [us-federal]
                vehicle:
                  wheelbase: 2.64 m ± 2 mm
                  tyres: {front: {load-index: 82, speed-symbol: T}}
                parts:
                  - id: drive-unit
                    serial: 0012345
                    firmware: 1.10
                    make: no
                    position: {x: -0.2 m}
                punch-list:
                  - {id: 1, text: torque marks, holds: road, closed: {by: A, date: 2026-03-30}}
                units: [a, b]
                """);
        Path file = Files.writeString(folder.resolve("job.json"), """
                {"kerbfolio": 1,
                 "job": {"number": "0042", "revision": "1.10", "date": "2026-03-31", "tier": "full",
                         "compared-with": ["us-federal"]},
                 "vehicle": {"wheelbase": "2.64 m ± 2 mm",
                             "tyres": {"front": {"load-index": 82, "speed-symbol": "T"}}},
                 "parts": [{"id": "drive-unit", "serial": "0012345", "firmware": "1.10", "make": "no",
                            "position": {"x": "-0.2 m"}}],
                 "punch-list": [{"id": "1", "text": "torque marks", "holds": "road",
                                 "closed": {"by": "A", "date": "2026-03-30"}}],
                 "units": ["a", "b"]}
                """);
        JobFile json = JobFile.read(file);
        assertEquals(yaml.job(), json.job());
        assertEquals("0012345", json.job().parts().get(0).serial());
        assertEquals("1.10", yaml.job().parts().get(0).firmware());
        assertEquals("no", yaml.job().parts().get(0).make());
        assertEquals(
                "punch-list[1].closed.by",
                json.places().paths().stream()
                        .filter(path -> path.endsWith(".by"))
                        .findFirst()
                        .orElseThrow());
        assertArrayEquals(Files.readAllBytes(file), json.bytes());
        assertEquals(file, json.file());
    }

    @Test
    void aFileOfAnotherVersionIsRefused() {
        assertEquals(
                List.of("job.yaml:1:12: kerbfolio: this program reads version 1 of the format; write `kerbfolio: 1`"),
                sheet.refused(Sheet.HEAD.replace("kerbfolio: 1", "kerbfolio: 2")));
    }

    @Test
    void numberAndRevisionNameAFolder() throws Exception {
        String rule =
                " names the dossier's folder; write at most 40 of A-Z a-z 0-9 - _ . and begin and end with a letter"
                        + " or digit";
        for (String bad : List.of("../../etc", ".hidden", "a/b", "K 7", "K7.", "Ü1", "-rf", "x".repeat(41))) {
            String shown = bad.length() > 40 ? bad.substring(0, 40) + "…" : bad;
            String head = Sheet.HEAD.replace("number: K-7", "number: " + bad);
            assertEquals(List.of("job.yaml:2:15: job > number: `" + shown + "`" + rule), sheet.refused(head), bad);
        }
        for (String good : List.of("K-7", "2026.014", "7", "x".repeat(40), "a_b")) {
            String head = Sheet.HEAD.replace("K-7", good).replace("revision: A", "revision: " + good);
            assertEquals(good, sheet.read(head).job().job().revision());
        }
    }

    @Test
    void aFileThatIsNotThereIsLeftToTheCaller() {
        assertThrows(NoSuchFileException.class, () -> JobFile.read(folder.resolve("none.yaml")));
        assertThrows(IOException.class, () -> JobFile.read(folder));
    }
}
