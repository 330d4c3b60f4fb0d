package kerbfolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.stream.IntStream;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import org.junit.jupiter.api.Test;

/** Every cable and fuse as the sound job records it; its words and numbers are those of {@link TractionText}. */
class ScheduleSheetTest {
    private static Opened opened(JobText job) {
        return Opened.of(Workbook.write(job.dossier()));
    }

    private static List<String> row(Opened opened, String below, String id, int columns) {
        int row = opened.row(ScheduleSheet.NAME, below, 0, id);
        return IntStream.range(0, columns)
                .mapToObj(column -> opened.cell(ScheduleSheet.NAME, row, column).getStringCellValue())
                .toList();
    }

    /** By hand: in the one string both fuses lie between the cells and the cable, whichever end is fed. */
    @Test
    void aCableStandsWithItsRatingsAndTheFusesThatGuardIt() {
        assertEquals(
                List.of(
                        "c-plus",
                        "contactor-plus/2 to junction-box/+",
                        "70 mm²",
                        "1 m",
                        "1000 V, 150 °C",
                        "330 A at 40 °C",
                        "60 °C",
                        "front-fuse, rear-fuse",
                        "orange",
                        "underfloor"),
                row(opened(TractionText.sound()), "cable", "c-plus", 10));
    }

    /** By hand: behind the heater's fuse lie its two cables and nothing else. */
    @Test
    void aFuseStandsWithItsRatingsAndTheCablesItGuards() {
        List<String> row = row(opened(TractionText.sound()), "fuse", "heater-fuse", 8);
        assertEquals(
                List.of("heater-fuse", "heater fuse", "30 A", "in junction-box", "500 V DC", "600 A to 20 kA"),
                row.subList(0, 6));
        assertEquals("40000 A²·s", row.get(6));
        assertEquals("c-heater-plus, c-heater-minus", row.get(7));
    }

    @Test
    void everyCableAndFuseHasARow() {
        Opened opened = opened(TractionText.sound());
        for (String id : List.of("c-minus", "c-mid-rear", "c-mid-front", "c-inverter", "c-motor", "c-inlet")) {
            assertNotNull(row(opened, "cable", id, 10));
        }
        for (String id : List.of("front-fuse", "rear-fuse", "heater-fuse", "aux-fuse")) {
            assertNotNull(row(opened, "fuse", id, 8));
        }
    }

    @Test
    void aJobWithoutHighVoltageHasNoSchedule() {
        assertNull(opened(JobText.onTwoAxles()).book().getSheet(ScheduleSheet.NAME));
    }
}
