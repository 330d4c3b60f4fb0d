package kerbfolio.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kerbfolio.car.Car;
import kerbfolio.formula.Absent;
import kerbfolio.job.NotApplicable;

/**
 * One check run over a car: the unit of paper and workbook.
 *
 * @param check the question
 * @param rows one per subject
 */
public record Examination(Check check, List<Row> rows) {

    /**
     * One subject's line.
     *
     * @param id stable name of the finding: {@code check/subject}
     * @param finding what was found
     * @param notApplicable who says that it does not apply, and why
     */
    public record Row(String id, Finding finding, Optional<NotApplicable> notApplicable) {
        /** Only what was not recorded can be said not to apply; a figure that is there applies, whoever says otherwise. */
        public Verdict verdict() {
            return notApplicable.isPresent() && finding.verdict() == Verdict.NO_EVIDENCE
                    ? Verdict.NOT_APPLICABLE
                    : finding.verdict();
        }

        private boolean isSilent() {
            List<Absent> missing = finding.result().missing();
            return verdict() == Verdict.NO_EVIDENCE
                    && !missing.isEmpty()
                    && missing.stream().allMatch(Absent::isUnrecorded);
        }
    }

    /** Runs a check. */
    public static Examination of(Check check, Car car, Limits limits) {
        var rows = new ArrayList<Row>();
        check.examine(car, limits).forEach(finding -> {
            String id = check.id() + "/" + slug(finding.subject());
            rows.add(new Row(id, finding, check.isWaivable() ? notApplicable(car, check.id(), id) : Optional.empty()));
        });
        return new Examination(check, List.copyOf(rows));
    }

    /** The same without the rows nobody asked for and nobody recorded; what was recorded and cannot be used is said. */
    public Examination withoutSilence() {
        return new Examination(
                check, rows.stream().filter(row -> !row.isSilent()).toList());
    }

    private static Optional<NotApplicable> notApplicable(Car car, String check, String id) {
        return car.job().notApplicable().stream()
                .filter(entry -> entry.check().equals(check) || entry.check().equals(id))
                .findFirst();
    }

    private static String slug(String subject) {
        return subject.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
    }
}
