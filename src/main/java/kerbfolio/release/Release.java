package kerbfolio.release;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerbfolio.check.Examination;
import kerbfolio.check.Limits;
import kerbfolio.check.Trade;
import kerbfolio.check.Verdict;
import kerbfolio.job.DocumentKind;
import kerbfolio.job.Gate;
import kerbfolio.job.Hold;
import kerbfolio.job.Job;
import kerbfolio.job.PunchItem;
import kerbfolio.job.Waiver;
import org.jspecify.annotations.Nullable;

/** The release statement: the four gates with every reason, and the readings that would lift most. */
public final class Release {
    private final Job job;
    private final List<Examination> examinations;
    private final Limits limits;
    private final Map<Gate, GateReport> gates = new EnumMap<>(Gate.class);
    private final List<NextReading> next;

    /**
     * @param examinations every check of the program run over the car, silent ones included
     */
    public Release(Job job, List<Examination> examinations, Limits limits) {
        this.job = job;
        this.examinations = List.copyOf(examinations);
        this.limits = limits;
        for (Gate gate : Gate.values()) {
            gates.put(gate, report(gate));
        }
        this.next = NextReadings.of(required());
    }

    public List<GateReport> gates() {
        return List.copyOf(gates.values());
    }

    public List<NextReading> next() {
        return next;
    }

    /** Whether nothing holds any gate and all that is required was examined. */
    public boolean isFree() {
        return gates.values().stream().allMatch(report -> report.state() == GateState.NO_HOLD);
    }

    /** What is printed: findings required at the job's tier, and of the others those that have something to say. */
    public List<Examination> spoken() {
        Set<String> required = Set.copyOf(requiredIds());
        return examinations.stream()
                .map(examination -> isRequired(examination, required) ? examination : examination.withoutSilence())
                .filter(examination -> !examination.rows().isEmpty())
                .toList();
    }

    private GateReport report(Gate gate) {
        var reasons = new Reasons();
        var waivers = new ArrayList<Waiver>();
        findings(gate, reasons, waivers);
        evidence(gate, reasons, waivers);
        punchList(gate, reasons);
        for (Gate before : gate.needs()) {
            GateState state = known(before).state();
            if (state != GateState.NO_HOLD) {
                reasons.add(new Reason(state, "gate " + before + ": " + state));
            }
            waivers.addAll(known(before).waivers());
        }
        if (gate != Gate.ROAD && limits.evidence(gate).isEmpty()) {
            reasons.add(new Reason(GateState.NOT_EXAMINED, "no requirement set asks anything for this gate"));
        }
        if (gate == Gate.ROAD) {
            authority().ifPresent(reasons::add);
        }
        List<Reason> all = reasons.all();
        GateState state = all.isEmpty() ? GateState.NO_HOLD : all.get(0).state();
        return new GateReport(gate, state, all, waivers.stream().distinct().toList());
    }

    /** Whatever is not met holds, whether it was asked for or not; whatever is undecided leaves the gate not examined. */
    private void findings(Gate gate, Reasons reasons, List<Waiver> waivers) {
        for (Examination examination : examinations) {
            if (examination.check().gate().equals(Optional.of(gate))) {
                for (Examination.Row row : examination.rows()) {
                    boolean isFault = row.verdict() == Verdict.NOT_MET;
                    boolean isUnasked =
                            row.verdict() == Verdict.UNDECIDED && !isRequired(examination, limits.evidence(gate));
                    if (isFault || isUnasked) {
                        waiver(examination, row).ifPresentOrElse(waivers::add, () -> reasons.add(examination, row));
                    }
                }
            }
        }
    }

    /** Whatever is asked for and not cleared leaves the gate not examined; one reason for all that share it. */
    private void evidence(Gate gate, Reasons reasons, List<Waiver> waivers) {
        var unknown = new ArrayList<String>();
        for (String required : limits.evidence(gate)) {
            List<Examination> found = examinations.stream()
                    .filter(examination -> answers(examination, required))
                    .toList();
            if (found.stream().allMatch(examination -> examination.rows().isEmpty())) {
                unknown.add(Trade.words(required));
            }
            for (Examination examination : found) {
                for (Examination.Row row : examination.rows()) {
                    Optional<Waiver> waiver = waiver(examination, row);
                    if (!isOpen(gate, examination, row)) {
                        continue;
                    }
                    if (waiver.isPresent()) {
                        waivers.add(waiver.get());
                    } else if (row.verdict() == Verdict.MET_UNCONFIRMED) {
                        reasons.addWeak(examination, row);
                    } else {
                        reasons.add(examination, row);
                    }
                }
            }
        }
        if (!unknown.isEmpty()) {
            reasons.add(
                    new Reason(GateState.NOT_EXAMINED, "this version does not examine " + String.join(", ", unknown)));
        }
    }

    /** What a gate asks for and does not have; what is not met at the check's own gate was said there already. */
    private static boolean isOpen(Gate gate, Examination examination, Examination.Row row) {
        Optional<Gate> own = examination.check().gate();
        return switch (row.verdict()) {
            case NOT_MET -> !own.equals(Optional.of(gate));
            // A working has no limit by nature; a check that holds a gate lacks one only if its set forgot it.
            case NO_LIMIT -> own.isPresent();
            default -> !row.verdict().clears();
        };
    }

    private void punchList(Gate gate, Reasons reasons) {
        for (PunchItem item : job.punchList()) {
            Hold hold = item.holds();
            if (hold.toString().equals(gate.toString()) && !isClosed(item)) {
                reasons.add(
                        new Reason(GateState.HELD, "punch list " + item.id() + ": " + item.text(), List.of(item.id())));
            }
        }
    }

    /** An item that holds a gate closes only with a name and a reading or a photo. */
    public static boolean isClosed(PunchItem item) {
        var closed = item.closed();
        if (closed == null || !isWritten(closed.by())) {
            return false;
        }
        boolean evidence = isWritten(closed.reading()) || isWritten(closed.photo());
        boolean asks = item.holds() != Hold.NONE;
        return evidence || !asks;
    }

    private static boolean isWritten(@Nullable String text) {
        return text != null && !text.isBlank();
    }

    /** No program clears a road: it takes the authority's own paper. */
    private Optional<Reason> authority() {
        boolean recorded = job.documents().stream()
                .anyMatch(document -> document.kind() == DocumentKind.AUTHORITY_PAPER
                        && document.number() != null
                        && document.date() != null);
        return recorded
                ? Optional.empty()
                : Optional.of(new Reason(
                        GateState.NOT_EXAMINED,
                        "the authority's paper is not recorded in documents with number and date"));
    }

    private Optional<Waiver> waiver(Examination examination, Examination.Row row) {
        if (!examination.check().isWaivable()) {
            return Optional.empty();
        }
        return job.waivers().stream()
                .filter(waiver -> waiver.finding().equals(row.id()))
                .findFirst();
    }

    private List<Examination.Row> required() {
        Set<String> ids = Set.copyOf(requiredIds());
        return examinations.stream()
                .filter(examination -> isRequired(examination, ids))
                .flatMap(examination -> examination.rows().stream())
                .toList();
    }

    private List<String> requiredIds() {
        return List.of(Gate.values()).stream()
                .flatMap(gate -> limits.evidence(gate).stream())
                .distinct()
                .toList();
    }

    private static boolean isRequired(Examination examination, Set<String> ids) {
        return ids.contains(examination.check().id())
                || ids.contains(examination.check().trade().key());
    }

    private static boolean answers(Examination examination, String required) {
        return examination.check().id().equals(required)
                || examination.check().trade().key().equals(required);
    }

    private GateReport known(Gate gate) {
        GateReport report = gates.get(gate);
        if (report == null) {
            throw new IllegalStateException(gate + " is needed before it is reported");
        }
        return report;
    }
}
