package kerbfolio.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import kerbfolio.car.Ledger;
import kerbfolio.quantity.UnitSystem;

/**
 * One side of the mass ledger.
 *
 * @param way what was done with all of it
 * @param entries one for a row of the figure
 */
record LedgerSide(String way, List<Entry> entries) {
    private static final int MOST_ROWS = 14;
    private static final int LONGEST_NAME = 60;

    /** A part, or several together. */
    record Entry(String name, Value mass, boolean isSingle) {
        String words() {
            return shortened(name) + ", " + mass.text();
        }

        /** Its length as a share of the longest bar; several together may weigh more than that shows. */
        double share(double most) {
            return Math.max(0, Math.min(1, mass.si() / most));
        }

        String label(double most) {
            return mass.si() > most ? name + ", not to scale" : name;
        }
    }

    /** Largest first, then those whose mass is not known; what no row is left for is taken together. */
    static LedgerSide of(String way, List<Ledger.Line> lines, UnitSystem units) {
        List<Entry> unknown = new ArrayList<>(lines.stream()
                .filter(line -> line.mass().amount().isEmpty())
                .map(line -> entry(line, units))
                .toList());
        List<Ledger.Line> known = lines.stream()
                .filter(line -> line.mass().amount().isPresent())
                .sorted(Comparator.comparingDouble(
                        line -> -Value.of(line.mass(), units).si()))
                .toList();
        if (lines.size() > MOST_ROWS && unknown.size() > 1) {
            var first = unknown.get(0);
            unknown = List.of(new Entry(unknown.size() + " parts", first.mass(), false));
        }
        int rows = MOST_ROWS - unknown.size();
        int alone = known.size() <= rows ? known.size() : rows - 1;
        var entries = new ArrayList<Entry>();
        known.subList(0, alone).forEach(line -> entries.add(entry(line, units)));
        if (alone < known.size()) {
            List<Ledger.Line> small = known.subList(alone, known.size());
            entries.add(new Entry(small.size() + " smaller parts", Value.of(Ledger.together(small), units), false));
        }
        entries.addAll(unknown);
        return new LedgerSide(way, List.copyOf(entries));
    }

    private static Entry entry(Ledger.Line line, UnitSystem units) {
        return new Entry(line.name(), Value.of(line.mass(), units), true);
    }

    private static String shortened(String name) {
        String clean = Pen.clean(name);
        return clean.codePointCount(0, clean.length()) <= LONGEST_NAME
                ? clean
                : clean.substring(0, clean.offsetByCodePoints(0, LONGEST_NAME)) + "\u2026";
    }

    /** What the heaviest is; empty where no mass is known. */
    String largest() {
        return entries.stream()
                .findFirst()
                .filter(entry -> entry.mass().isKnown())
                .map(entry -> "what was " + way + ": " + entry.words())
                .orElse("");
    }

    String words() {
        if (entries.isEmpty()) {
            return "Nothing is recorded as " + way + ".";
        }
        String what = Character.toUpperCase(way.charAt(0)) + way.substring(1);
        return Words.sentences(
                list(what + ", largest first: ", true, Entry::words),
                list(what + ", mass not known: ", false, entry -> shortened(entry.name())));
    }

    private String list(String begin, boolean isKnown, Function<Entry, String> words) {
        String list = entries.stream()
                .filter(entry -> entry.mass().isKnown() == isKnown)
                .map(words)
                .collect(Collectors.joining("; "));
        return list.isEmpty() ? "" : begin + list + ".";
    }
}
