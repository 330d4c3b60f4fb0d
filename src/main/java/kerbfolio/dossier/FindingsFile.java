package kerbfolio.dossier;

import java.util.List;
import java.util.Optional;
import kerbfolio.check.Examination;
import kerbfolio.check.Limit;
import kerbfolio.formula.Term;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Notation;
import kerbfolio.release.GateReport;
import kerbfolio.release.Reason;
import kerbfolio.release.Release;
import org.jspecify.annotations.Nullable;

/**
 * What programs read: the gates, and every finding that is printed.
 *
 * @param gates the four gates
 * @param findings one per subject of each examination
 */
public record FindingsFile(List<GateEntry> gates, List<FindingEntry> findings) {
    /** A gate. */
    public record GateEntry(String name, String state, List<String> reasons) {}

    /**
     * A finding.
     *
     * @param value in {@code unit}; null if there is none
     * @param uncertainty expanded, k = 2, in {@code unit}; null if there is no value
     */
    public record FindingEntry(
            String id,
            String check,
            String trade,
            String subject,
            String verdict,
            @Nullable Double value,
            String unit,
            @Nullable Double uncertainty,
            @Nullable String limit,
            @Nullable String source,
            @Nullable String gate) {}

    public static FindingsFile of(Release release) {
        return new FindingsFile(
                release.gates().stream().map(FindingsFile::entry).toList(),
                release.spoken().stream()
                        .flatMap(examination -> examination.rows().stream().map(row -> entry(examination, row)))
                        .toList());
    }

    private static GateEntry entry(GateReport report) {
        return new GateEntry(
                report.gate().toString(),
                report.state().toString(),
                report.reasons().stream().map(Reason::text).toList());
    }

    private static FindingEntry entry(Examination examination, Examination.Row row) {
        Term result = row.finding().result();
        Optional<Amount> amount = result.amount();
        Optional<Limit> limit = row.finding().limit();
        return new FindingEntry(
                row.id(),
                examination.check().id(),
                examination.check().trade().key(),
                row.finding().subject(),
                row.verdict().toString(),
                amount.map(a -> Notation.settled(result.unit().fromSi(a.si()))).orElse(null),
                result.unit().text(),
                amount.map(a -> Notation.settled(result.unit().differenceFromSi(a.expanded())))
                        .orElse(null),
                limit.map(l -> l.bound() + " " + l.value()).orElse(null),
                limit.map(Limit::origin).orElse(null),
                examination.check().gate().map(Object::toString).orElse(null));
    }
}
