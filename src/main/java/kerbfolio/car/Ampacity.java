package kerbfolio.car;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.ConductorSize;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;
import kerbfolio.source.Table;

/** What a cable carries without end where it runs: its maker's figure, moved from his ambient to that of the car. */
final class Ampacity {
    /** Heat in goes with the square of the current, heat out with the rise over the ambient. */
    static final Formula CORRECTED = Formula.of("I_c = I_z*sqrt((T_max - T_amb)/(T_max - T_ref))")
            .giving("current the cable carries without end where it runs", "A")
            .with("I_z", "the same at its reference ambient", "A")
            .with("T_max", "highest conductor temperature", "°C")
            .with("T_amb", "hottest ambient on its way", "°C")
            .with("T_ref", "reference ambient", "°C")
            .needs("T_amb < T_max")
            .needs("T_ref < T_max")
            .from(Source.IEC_60287.clause("permissible current, without losses in the insulation"))
            .build();

    private static final Table TABLE = Table.of("conductor-ampacity");
    private static final String REFERENCE = "30 °C";
    private static final double DUST = 1e-9;

    private final Evidence evidence;
    private final Conductor conductor;

    Ampacity(Evidence evidence, Conductor conductor) {
        this.evidence = evidence;
        this.conductor = conductor;
    }

    Working corrected() {
        Optional<String> row = conductor.link().ampacity() == null ? row() : Optional.empty();
        return row.map(this::ofTable).orElseGet(this::ofMaker);
    }

    private Working ofMaker() {
        var link = conductor.link();
        return work(
                conductor.stated("ampacity", "current without end", "A", link.ampacity()),
                conductor.maxTemperature(),
                conductor.stated("ampacity-at", "ambient of the ampacity", "°C", link.ampacityAt()));
    }

    /** A table made for boats may hold a cable whose maker states nothing; it clears none. */
    private Working ofTable(String row) {
        String id = conductor.link().id();
        Term tabled = evidence.tabled(TABLE, conductor.path("ampacity"), "current without end of " + id, row);
        Term doubted = tabled instanceof Known known
                ? known.doubted("the ampacity of " + id + " is not its maker's but that of a table for boats")
                : tabled;
        return work(
                doubted,
                column("temperature of the column taken for " + id, row.substring(row.indexOf('@') + 1) + " °C"),
                column("ambient of the table", REFERENCE));
    }

    private static Known column(String name, String text) {
        Quantity quantity = Quantity.of(text);
        return new Known(
                "table " + TABLE.name(),
                name,
                quantity,
                Amount.exact(quantity.si()),
                Basis.STATED,
                TABLE.citation().toString(),
                List.of());
    }

    private Working work(Term current, Term most, Term reference) {
        return Working.fill(CORRECTED)
                .named("current " + conductor.link().id() + " carries without end where it runs")
                .put("I_z", current)
                .put("T_max", most)
                .put(
                        "T_amb",
                        conductor.stated(
                                "ambient",
                                "hottest ambient",
                                "°C",
                                conductor.link().ambient()))
                .put("T_ref", reference)
                .work();
    }

    /** The row of the next smaller gauge, in the column of the next lower temperature. */
    private Optional<String> row() {
        Optional<Amount> area = conductor.area().amount();
        Optional<Amount> most = conductor.maxTemperature().amount();
        if (area.isEmpty() || most.isEmpty() || !conductor.isCopper()) {
            return Optional.empty();
        }
        Comparator<String> widest = Comparator.comparingDouble(Ampacity::square);
        return TABLE.rows().keySet().stream()
                .filter(row -> square(row) <= area.get().si() * (1 + DUST))
                .filter(row -> celsius(row) <= Unit.of("°C").fromSi(most.get().si()) + DUST)
                .max(widest.thenComparingDouble(Ampacity::celsius));
    }

    private static double celsius(String row) {
        return Double.parseDouble(row.substring(row.indexOf('@') + 1));
    }

    private static double square(String row) {
        return Stream.of(row.substring(0, row.indexOf('@')) + " AWG")
                .flatMap(gauge -> ConductorSize.of(gauge).stream())
                .flatMap(size -> Conductor.area("", size.text(), size).amount().stream())
                .mapToDouble(Amount::si)
                .sum();
    }
}
