package kerbfolio.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import kerbfolio.dossier.Dossier;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The dossier as a workbook whose figures are live: a reader's own spreadsheet reruns what the program ran. The same
 * dossier gives the same bytes.
 */
public final class Workbook {
    private static final String CREATOR = "Kerbfolio";

    private Workbook() {}

    /** An XLSX file. Every formula carries the value it had at issue, for viewers that do not recalculate. */
    public static byte[] write(Dossier dossier) {
        try (var book = new XSSFWorkbook();
                var out = new ByteArrayOutputStream()) {
            fill(book, dossier);
            properties(book.getProperties().getCoreProperties(), dossier);
            book.setForceFormulaRecalculation(true);
            book.write(out);
            return FixedZip.of(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every address is settled before the first formula is written, so that a cell may refer to one further down. */
    private static void fill(XSSFWorkbook book, Dossier dossier) {
        var arrangement = new Arrangement(dossier);
        var addresses = new AddressBook(arrangement.figures());
        var readings = new ReadingsSheet(arrangement);
        List<TradeSheet> trades = arrangement.sheets();
        readings.settle(addresses);
        trades.forEach(trade -> trade.settle(addresses));
        var binding = new Binding(book, dossier.head());
        SummarySheet.write(dossier, binding);
        readings.write(addresses, binding);
        trades.forEach(trade -> trade.write(addresses, binding));
        FindingsSheet.write(dossier, binding);
        PunchListSheet.write(dossier, binding);
        EvidenceSheet.write(dossier, binding);
        ChecklistSheet.write(dossier, binding);
        ScheduleSheet.write(dossier, binding);
        ToRecordSheet.write(dossier, binding);
        if (!dossier.car().ledger().isEmpty()) {
            LedgerSheet.write(dossier, addresses, binding);
        }
        PicturesSheet.write(dossier, binding);
    }

    private static void properties(CoreProperties properties, Dossier dossier) {
        var head = dossier.head();
        Optional<Date> day = Optional.of(Date.from(
                LocalDate.parse(head.date()).atStartOfDay(ZoneOffset.UTC).toInstant()));
        properties.setCreator(CREATOR);
        properties.setLastModifiedByUser(CREATOR);
        properties.setTitle(CellText.of("Job " + head.number() + ", revision " + head.revision())
                .stored());
        properties.setCreated(day);
        properties.setModified(day);
    }
}
