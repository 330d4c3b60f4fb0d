package kerbfolio.workbook;

import java.util.Optional;
import java.util.regex.Pattern;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;

/** Where in the job file a figure stands, for those that stand there as one number somebody wrote. */
final class JobPath {
    /** A row of a published table, {@code tyre-load-index[91]}: what is written in the job file is its key. */
    private static final Pattern TABLE = Pattern.compile("[a-z0-9-]+\\[[^]]*]");

    private static final String SET = "requirement set ";

    private JobPath() {}

    /** The path; empty for limits, solved and counted figures, and rows of tables. */
    static Optional<String> of(Term leaf) {
        if (leaf instanceof Known known && (known.basis() == Basis.MEASURED || known.basis() == Basis.STATED)) {
            return Optional.of(known.path()).filter(path -> !path.isEmpty() && !isTable(path));
        }
        if (leaf instanceof Absent absent) {
            return Optional.of(absent.path()).filter(path -> !path.startsWith(SET));
        }
        return Optional.empty();
    }

    static boolean isTable(String path) {
        return TABLE.matcher(path).matches();
    }
}
