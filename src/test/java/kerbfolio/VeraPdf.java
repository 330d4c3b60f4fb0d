package kerbfolio;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** A judge of PDF files that shares nothing with this program. */
public final class VeraPdf {
    /** Fewer than a few words ask for: the judge did look. */
    private static final int CHECKS = 100;

    private VeraPdf() {}

    /** Holds a file against ISO 19005-3, level A, and ISO 14289-1, in one reading. */
    public static void assertArchivalAndAccessible(byte[] pdf) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        List<PDFAFlavour> rules = List.of(PDFAFlavour.PDFA_3_A, PDFAFlavour.PDFUA_1);
        try (var file = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), rules.get(0));
                var judge = Foundries.defaultInstance().createValidator(rules)) {
            List<ValidationResult> results = judge.validateAll(file);
            assertEquals(
                    rules,
                    results.stream().map(ValidationResult::getPDFAFlavour).toList());
            for (ValidationResult result : results) {
                assertEquals(List.of(), broken(result), result.getPDFAFlavour().toString());
                assertTrue(result.isCompliant());
                assertTrue(result.getTotalAssertions() > CHECKS, "only " + result.getTotalAssertions() + " checks");
            }
        }
    }

    private static List<String> broken(ValidationResult result) {
        return result.getTestAssertions().stream()
                .filter(check -> check.getStatus() == TestAssertion.Status.FAILED)
                .map(check -> check.getRuleId().getClause() + "-"
                        + check.getRuleId().getTestNumber() + ": " + check.getMessage() + " at "
                        + check.getLocation().getContext())
                .toList();
    }
}
