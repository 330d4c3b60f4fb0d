package kerbfolio.car;

import java.util.Comparator;
import java.util.Optional;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.ConductorSize;
import kerbfolio.job.Link;
import kerbfolio.job.Metal;
import kerbfolio.quantity.Notation;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;
import kerbfolio.source.Table;
import org.jspecify.annotations.Nullable;

/** The conductor of a cable as terms: its cross-section, and its resistance at its largest and at its least. */
public final class Conductor {
    static final Formula GAUGE_AREA = Formula.of("A = pi/4*(d_36*92^((36 - n)/39))^2")
            .giving("cross-section of the conductor", "mm²")
            .with("n", "gauge number; 1/0 counts as 0, 4/0 as -3", "1")
            .constant("pi", Math.PI, "1", Source.ASTM_B258.clause("area of a circle"))
            .constant("d_36", 0.127, "mm", Source.ASTM_B258.clause("diameter of gauge 36"))
            .from(Source.ASTM_B258.clause("gauges as a geometric series"))
            .build();

    static final Formula MILS_AREA = Formula.of("A = N*a")
            .giving("cross-section of the conductor", "mm²")
            .with("N", "thousands of circular mils", "1")
            .constant("a", 0.506707, "mm²", Source.SP_811.clause("B.8, circular mil"))
            .from(Source.SP_811.clause("B.8, circular mil"))
            .build();

    /** No strand conducts better than solid annealed copper, so no fault meets less. */
    static final Formula LEAST_RESISTANCE = Formula.of("R_s = rho*L/A")
            .giving("resistance of a solid copper conductor of this size at 20 °C", "mΩ")
            .with("L", "length of one conductor", "m")
            .with("A", "cross-section of the conductor", "mm²")
            .constant("rho", 1 / 58.0, "Ω·mm²/m", Source.IEC_60028.clause("resistivity at 20 °C"))
            .needs("A > 0*[mm²]")
            .from(Source.CIRCUITS.clause("resistance of a wire"))
            .build();

    static final Formula RESISTANCE = Formula.of("R_T = r*L*(1 + alpha*(T - T_20))")
            .giving("resistance of one conductor, hot", "mΩ")
            .with("r", "largest resistance at 20 °C", "Ω/km")
            .with("L", "length of one conductor", "m")
            .with("T", "temperature of the conductor", "°C")
            .constant("alpha", 0.00393, "1/K", Source.IEC_60028.clause("temperature coefficient at 20 °C"))
            .constant("T_20", 20, "°C", Source.IEC_60028.clause("reference temperature"))
            .from(Source.IEC_60228.clause("resistance at another temperature"))
            .build();

    /** What a conductor stands from its highest working temperature to what its insulation survives, without loss. */
    static final Formula WITHSTAND = Formula.of("k = K*sqrt(ln((T_f - T_0)/(T_i - T_0)))")
            .giving("short-circuit factor of the conductor", "A·s^0.5/mm²")
            .with("T_i", "temperature before the fault", "°C")
            .with("T_f", "temperature after the fault", "°C")
            .constant("K", 226, "A·s^0.5/mm²", Source.IEC_60364_5_54.clause("Annex A, copper"))
            .constant("T_0", -234.5, "°C", Source.IEC_60364_5_54.clause("Annex A, copper"))
            .needs("T_i < T_f")
            .from(Source.IEC_60364_5_54.clause("Annex A"))
            .build();

    /** Sizes closer than this, relatively, are the same. */
    private static final double DUST = 1e-9;

    private final Evidence evidence;
    private final Link link;

    Conductor(Evidence evidence, Link link) {
        this.evidence = evidence;
        this.link = link;
    }

    public Link link() {
        return link;
    }

    /** A figure of the cable as its marking or data sheet states it. */
    Term stated(String key, String name, String unit, @Nullable Quantity quantity) {
        return evidence.stated(path(key), name + " of " + link.id(), unit, quantity, link.ratedBy());
    }

    String path(String key) {
        return "links[" + link.id() + "]." + key;
    }

    /** The size as marked, where it is one. */
    Optional<ConductorSize> size() {
        return Optional.ofNullable(link.size()).flatMap(ConductorSize::of);
    }

    /** Whether it is known to be of copper, tinned or plain. */
    boolean isCopper() {
        return link.metal() == Metal.COPPER || link.metal() == Metal.TINNED_COPPER;
    }

    /** Why a figure for copper does not stand for this conductor. */
    Absent notCopper(String name, String unit) {
        return link.metal() == null
                ? Absent.unrecorded(path("metal"), "metal of " + link.id(), unit)
                : new Absent(path("metal"), name, Unit.of(unit), "is known here for copper, not for " + link.metal());
    }

    public Term length() {
        return stated("length", "length of one conductor", "m", link.length());
    }

    public Term voltage() {
        return stated("voltage", "rated voltage", "V", link.voltage());
    }

    public Term maxTemperature() {
        return stated("max-temperature", "highest conductor temperature", "°C", link.maxTemperature());
    }

    /** Cross-section: as marked in mm², or computed from a gauge or from circular mils. */
    public Term area() {
        String name = "cross-section of " + link.id();
        return size().map(size -> area(path("size"), name, size))
                .orElseGet(() -> Absent.unrecorded(path("size"), name, "mm²"));
    }

    /** Of a size that is marked somewhere. */
    static Term area(String mark, String name, ConductorSize size) {
        return switch (size.scale()) {
            case SQUARE_MILLIMETRES -> marked(mark, name, size, "mm²");
            case GAUGE ->
                Working.fill(GAUGE_AREA)
                        .named(name)
                        .put("n", marked(mark, "gauge, " + name, size, "1"))
                        .work();
            case KCMIL ->
                Working.fill(MILS_AREA)
                        .named(name)
                        .put("N", marked(mark, "thousands of circular mils, " + name, size, "1"))
                        .work();
        };
    }

    private static Known marked(String path, String name, ConductorSize size, String unit) {
        return Known.exact(
                path, name, Quantity.of(size.figure(), Unit.of(unit)), Basis.STATED, "marked " + size.text());
    }

    /** The least it can be, for a fault: solid copper, whatever it is made of. */
    public Working leastResistance() {
        return Working.fill(LEAST_RESISTANCE)
                .named("least resistance of " + link.id())
                .put("L", length())
                .put("A", area())
                .work();
    }

    /** The largest it may be at a temperature, for a drop. */
    public Working resistance(Term temperature) {
        return Working.fill(RESISTANCE)
                .named("resistance of one conductor of " + link.id())
                .put("r", largest())
                .put("L", length())
                .put("T", temperature)
                .work();
    }

    /** By the table of flexible conductors; a size between two of its rows counts as the smaller. */
    private Term largest() {
        String name = "largest resistance of " + link.id();
        Optional<Double> square = area().amount().map(amount -> Unit.of("mm²").fromSi(amount.si()));
        if (square.isEmpty()) {
            return new Absent(path("size"), name, Unit.of("Ω/km"), "the size of the conductor is not recorded");
        }
        if (link.metal() == Metal.ALUMINIUM) {
            return notCopper(name, "Ω/km");
        }
        Table table = link.metal() == Metal.TINNED_COPPER
                ? Table.of("tinned-conductor-resistance")
                : Table.of("conductor-resistance");
        return table.rows().keySet().stream()
                .map(Double::valueOf)
                .filter(row -> row <= square.get() * (1 + DUST))
                .max(Comparator.naturalOrder())
                .map(Notation::plain)
                .map(row -> evidence.tabled(table, path("size"), name + ", taken as " + row + " mm²", row))
                .map(this::doubted)
                .orElseGet(() -> new Absent(path("size"), name, Unit.of("Ω/km"), "is below the smallest of the table"));
    }

    private Term doubted(Term tabled) {
        return link.metal() == null && tabled instanceof Known known
                ? known.doubted("the metal of " + link.id() + " is not recorded; it is taken as plain copper")
                : tabled;
    }

    /** Current it carries without end where it runs. */
    public Working ampacity() {
        return new Ampacity(evidence, this).corrected();
    }

    /** Short-circuit factor k: heat the conductor takes before its insulation gives way. */
    public Term withstand() {
        if (!isCopper()) {
            return notCopper("short-circuit factor of " + link.id(), "A·s^0.5/mm²");
        }
        String insulation = link.insulation() == null ? null : link.insulation().toString();
        Term last = evidence.tabled(
                Table.of("fault-temperature"),
                path("insulation"),
                "temperature the insulation of " + link.id() + " survives",
                insulation);
        return Working.fill(WITHSTAND)
                .named("short-circuit factor of " + link.id())
                .put("T_i", maxTemperature())
                .put("T_f", last)
                .work();
    }
}
