package kerbfolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody changes a number on the sheet of readings, and his spreadsheet works out what the program would. */
class EditedReadingTest {
    private static final String AXLES = "Is each axle as delivered within its permitted mass?";
    private static final String FRONT = "front axle, as delivered";
    private static final int PATH = 1;

    @Test
    void aHundredKilogramsMoreOnTheFrontAxleAreAHundredLessOfMargin() {
        // By hand, from the sample: 640 kg permitted, 430 kg weighed; 640 - 530 = 110.
        Opened edited = edited("530");
        int row = edited.row("Weight", AXLES, 0, FRONT);
        assertEquals(110, edited.cell("Weight", row, TradeSheet.RESULT).getNumericCellValue(), 1e-9);
        assertEquals(110, edited.cell("Weight", row, TradeSheet.MARGIN).getNumericCellValue(), 1e-9);
        assertEquals("met, unconfirmed", verdict(edited, row));
    }

    @Test
    void anAxleMadeTooHeavyIsNotMet() {
        // By hand: 640 - 730 = -90, further from 0 than the weighbridge's U of 2 · 10/√3 = 11.5 kg.
        Opened edited = edited("730");
        int row = edited.row("Weight", AXLES, 0, FRONT);
        assertEquals(-90, edited.cell("Weight", row, TradeSheet.RESULT).getNumericCellValue(), 1e-9);
        assertEquals("not met", verdict(edited, row));
        assertEquals(
                "met, unconfirmed",
                edited.cell("Weight", row, TradeSheet.AT_ISSUE).getStringCellValue());
    }

    @Test
    void anAxleWithinTheUncertaintyOfItsLimitIsUndecided() {
        // By hand: 640 - 635 = 5, nearer to 0 than 11.5 kg.
        Opened edited = edited("635");
        assertEquals("undecided", verdict(edited, edited.row("Weight", AXLES, 0, FRONT)));
    }

    @Test
    void aReadingTakenAwayIsNoEvidence() {
        Opened edited = edited("");
        int row = edited.row("Weight", AXLES, 0, FRONT);
        assertEquals("no evidence", verdict(edited, row));
        assertEquals(Pen.NOTHING, edited.cell("Weight", row, TradeSheet.RESULT).getStringCellValue());
    }

    @Test
    void theEditedSheetSaysWhatARerunOfTheProgramSays(@TempDir Path folder) {
        for (String mass : new String[] {"530", "635", "730"}) {
            Opened edited = edited(mass);
            Opened rerun = Opened.of(IssuedJob.changed(
                            "first",
                            folder,
                            "{ front: 430 kg, rear: 390 kg }",
                            "{ front: " + mass + " kg, rear: 390 kg }")
                    .workbook());
            rerun.assertAgrees(edited);
        }
    }

    private static String verdict(Opened opened, int row) {
        return opened.cell("Weight", row, TradeSheet.VERDICT).getStringCellValue();
    }

    /** The first sample's workbook with another front axle, worked out again. */
    private static Opened edited(String kilograms) {
        Opened opened = Opened.of(IssuedJob.sample("first").workbook());
        int row = opened.row(ReadingsSheet.NAME, "", PATH, "weighings.as-delivered.axles.front");
        XSSFCell number = opened.cell(ReadingsSheet.NAME, row, ReadingsSheet.NUMBER);
        if (kilograms.isEmpty()) {
            number.setBlank();
        } else {
            number.setCellValue(Double.parseDouble(kilograms));
        }
        opened.book().getCreationHelper().createFormulaEvaluator().evaluateAll();
        return opened;
    }
}
