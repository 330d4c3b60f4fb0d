package kerbfolio.car;

import java.util.Optional;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Contactor;
import kerbfolio.job.Part;
import org.jspecify.annotations.Nullable;

/** The ratings of a contactor as terms. */
public final class ContactorPlate {
    private final Evidence evidence;
    private final Part part;
    private final @Nullable Contactor contactor;

    ContactorPlate(Evidence evidence, Part part) {
        this.evidence = evidence;
        this.part = part;
        this.contactor = part.contactor();
    }

    public Term breakingCurrent() {
        return evidence.stated(
                path("breaking-current"),
                "breaking current of " + part.title(),
                "A",
                contactor == null ? null : contactor.breakingCurrent(),
                from());
    }

    /** Against its marked polarity, absent until that is known; a contactor without one opens both ways alike. */
    public Term reverseBreakingCurrent() {
        if (isPolarised().isEmpty()) {
            return Absent.unrecorded(path("polarised"), "whether " + part.title() + " has a polarity", "A");
        }
        return isPolarised().get()
                ? evidence.stated(
                        path("reverse-breaking-current"),
                        "breaking current of " + part.title() + " against its polarity",
                        "A",
                        contactor == null ? null : contactor.reverseBreakingCurrent(),
                        from())
                : breakingCurrent();
    }

    /** Whether its maker marks a polarity; empty if nobody wrote it. */
    public Optional<Boolean> isPolarised() {
        return Optional.ofNullable(contactor).map(Contactor::polarised);
    }

    /** The terminal marked plus. */
    public Optional<Terminal> plusTerminal() {
        return Optional.ofNullable(contactor).map(Contactor::plusTerminal).map(name -> new Terminal(part.id(), name));
    }

    private @Nullable String from() {
        return contactor == null ? null : contactor.from();
    }

    private String path(String key) {
        return "parts[" + part.id() + "].contactor." + key;
    }
}
