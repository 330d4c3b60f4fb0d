package kerbfolio.figure;

import java.util.stream.Stream;
import kerbfolio.check.Examination;
import kerbfolio.dossier.Dossier;

/** What the checks found, as the dossier prints it. */
final class FindingRows {
    private FindingRows() {}

    /** The rows of a check; none where it is not printed. */
    static Stream<Examination.Row> of(Dossier dossier, String check) {
        return dossier.examinations().stream()
                .filter(examination -> examination.check().id().equals(check))
                .flatMap(examination -> examination.rows().stream());
    }
}
