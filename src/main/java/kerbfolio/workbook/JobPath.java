package kerbfolio.workbook;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.job.Job;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.Kebab;

/** Where in the job file a figure stands, for those that stand there as one number somebody wrote. */
final class JobPath {
    /** A row of a published table, {@code tyre-load-index[91]}: what is written in the job file is its key. */
    private static final Pattern TABLE = Pattern.compile("[a-z0-9-]+\\[[^]]*]");

    private static final Pattern ENTRY = Pattern.compile("\\[[^]]*]");

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

    /** Whether one number stands at a path, and not a section, an entry of a list, a word or a day. */
    static boolean isNumber(String path) {
        Type at = Job.class;
        for (String key : ENTRY.matcher(path).replaceAll("").split("\\.")) {
            at = inside(at, key);
        }
        return at == Quantity.class;
    }

    /** What stands under a key: of a list, what each of its entries is. */
    private static Type inside(Type section, String key) {
        if (!(section instanceof Class<?> type) || !type.isRecord()) {
            return Void.class;
        }
        return Arrays.stream(type.getRecordComponents())
                .filter(component -> Kebab.of(component.getName()).equals(key))
                .map(RecordComponent::getGenericType)
                .map(held -> held instanceof ParameterizedType list ? list.getActualTypeArguments()[0] : held)
                .findFirst()
                .orElse(Void.class);
    }

    static boolean isTable(String path) {
        return TABLE.matcher(path).matches();
    }
}
