package kerbfolio.car;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Part;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;

/**
 * How long a mechanic waits before he proves the car dead: the longest of what makers state, three times what each bus
 * takes by itself, and a least time. It is not the proof; the reading is.
 *
 * @param minutes whole minutes, rounded up
 * @param reason which of the reckoning decided, in words
 * @param reckoning everything that was weighed, the unknown among it
 */
public record Wait(int minutes, String reason, List<Entry> reckoning) {
    static final Formula WAIT = Formula.of("w = k*t")
            .giving("wait for a bus", "min")
            .with("t", "decay of the bus", "s")
            .constant("k", 3, "1", Source.OWN_RULE.clause("wait three times the decay"))
            .from(Source.OWN_RULE.clause("wait three times the decay"))
            .build();

    private static final double LEAST = 5;
    private static final double LEAST_UNKNOWN = 10;
    private static final double DUST = 1e-9;

    /**
     * One thing that asks for a wait.
     *
     * @param words whose wait it is
     * @param time how long; a working where it is computed, absent where it is not known
     */
    public record Entry(String words, Term time) {
        private double minutes() {
            return time.amount()
                    .map(amount ->
                            (amount.si() + amount.expanded()) / Unit.of("min").factor())
                    .orElse(0.0);
        }
    }

    /** @param discharges of every bus the car is left with; none means that nothing is known of them */
    static Wait of(List<Part> parts, Evidence evidence, List<Discharge> discharges) {
        var entries = new ArrayList<Entry>();
        for (Part part : parts) {
            if (part.electrical() != null && part.electrical().makersWait() != null) {
                entries.add(new Entry(
                        "the wait the maker of " + part.title() + " states",
                        new Nameplate(evidence, part).makersWait()));
            }
        }
        discharges.forEach(discharge -> {
            entries.add(entry(discharge.computed()));
            discharge.readings().forEach(reading -> entries.add(entry(reading.time())));
        });
        String unknown = unknown(discharges);
        entries.add(
                unknown.isEmpty()
                        ? rule(LEAST, "the least this program prints")
                        : rule(LEAST_UNKNOWN, "the least where something is unknown (" + unknown + ")"));
        Entry longest = entries.get(0);
        for (Entry entry : entries) {
            longest = entry.minutes() > longest.minutes() + DUST ? entry : longest;
        }
        return new Wait((int) Math.ceil(longest.minutes() - DUST), longest.words(), List.copyOf(entries));
    }

    private static Entry entry(Term decay) {
        return new Entry(
                "three times the " + decay.name(),
                Working.fill(WAIT)
                        .named("wait for the " + decay.name())
                        .put("t", decay)
                        .work());
    }

    /** What keeps a decay from being computed; a reading cannot stand in for it. */
    private static String unknown(List<Discharge> discharges) {
        if (discharges.isEmpty()) {
            return "no bus is recorded";
        }
        return discharges.stream()
                .filter(discharge -> discharge.computed().amount().isEmpty())
                .flatMap(discharge -> discharge.computed().missing().isEmpty()
                        ? Stream.of(discharge.computed().origin())
                        : discharge.computed().missing().stream().map(Wait::words))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static String words(Absent absent) {
        return absent.name() + ": " + absent.reason();
    }

    private static Entry rule(double minutes, String words) {
        Quantity quantity = Quantity.of(minutes, Unit.of("min"));
        return new Entry(
                words,
                new Known(
                        "",
                        words,
                        quantity,
                        Amount.exact(quantity.si()),
                        Basis.REQUIRED,
                        Source.OWN_RULE.title(),
                        List.of()));
    }
}
