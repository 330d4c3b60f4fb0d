package kerbfolio.car;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;
import kerbfolio.source.Table;

/** What the pilot signal of a charge lead says. Its law jumps and has gaps, so the bands stand in a table. */
final class PilotSignal {
    static final Formula CURRENT = Formula.of("I_p = a + b*d")
            .giving("current the pilot signal allows", "A")
            .with("a", "offset of the band", "A")
            .with("b", "slope of the band", "A/%")
            .with("d", "duty", "%")
            .from(Source.IEC_61851.clause("Annex A, duty of the pilot signal (clause from memory)"))
            .build();

    private static final double DUST = 1e-9;

    /**
     * Duties that follow one law.
     *
     * @param to the duty it ends at, %
     * @param ends whether that duty belongs to it
     * @param offset as written; empty where no current is said
     * @param slope as written; empty where no current is said
     * @param meaning what the signal says
     */
    private record Band(String to, boolean ends, String offset, String slope, String meaning) {
        static Band of(String to, String row) {
            String[] columns = row.split(Pattern.quote(";"), -1);
            return new Band(to, columns[0].equals("at most"), columns[1], columns[2], columns[3]);
        }

        double edge() {
            return Double.parseDouble(to);
        }

        boolean holds(double duty) {
            return ends ? duty <= edge() + DUST : duty < edge() - DUST;
        }

        boolean hasCurrent() {
            return !offset.isEmpty();
        }

        double at(double duty) {
            return Double.parseDouble(offset) + Double.parseDouble(slope) * duty;
        }

        /** Whether the law goes on into the next band without a jump. */
        boolean joins(Band next) {
            return hasCurrent() && next.hasCurrent() && Math.abs(at(edge()) - next.at(edge())) < DUST;
        }
    }

    private PilotSignal() {}

    /** The current of a duty; absent where none is said, or where the duty is not known well enough to say which. */
    static Term current(Evidence evidence, Term duty) {
        Amount amount = duty.amount().orElse(null);
        if (amount == null) {
            return new Absent("readings.charge.duty", duty.name(), Unit.of("A"), duty.origin());
        }
        Table table = Table.of("pilot-current");
        var bands = new ArrayList<Band>();
        table.rows().forEach((to, row) -> bands.add(Band.of(to, row)));
        Unit percent = Unit.of("%");
        int first = find(bands, percent.fromSi(amount.si() - amount.expanded()));
        int last = find(bands, percent.fromSi(amount.si() + amount.expanded()));
        for (int i = first; i < last; i++) {
            if (!bands.get(i).joins(bands.get(i + 1))) {
                return absent("within its uncertainty the duty lies on both sides of "
                        + bands.get(i).to() + " %, where the law jumps");
            }
        }
        // The band of the upper end: its law is the one a lead must bear.
        Band band = bands.get(last);
        return band.hasCurrent()
                ? Working.fill(CURRENT)
                        .put("a", figure(evidence, table, band, "offset of the band", band.offset() + " A"))
                        .put("b", figure(evidence, table, band, "slope of the band", band.slope() + " A/%"))
                        .put("d", duty)
                        .work()
                : absent("a pilot signal of this duty says: " + band.meaning());
    }

    private static int find(List<Band> bands, double duty) {
        int at = 0;
        while (at < bands.size() - 1 && !bands.get(at).holds(duty)) {
            at++;
        }
        return at;
    }

    private static Term absent(String why) {
        return new Absent("readings.charge.duty", "current the pilot signal allows", Unit.of("A"), why);
    }

    private static Known figure(Evidence evidence, Table table, Band band, String name, String text) {
        Quantity quantity = Quantity.of(text);
        return new Known(
                table.name() + "[" + band.to() + "]",
                name + " that ends at " + band.to() + " %",
                quantity,
                Amount.exact(quantity.si()),
                Basis.STATED,
                table.citation().toString(),
                evidence.doubts(table));
    }
}
