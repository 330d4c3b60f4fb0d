package kerbfolio.car;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.job.Instrument;
import kerbfolio.job.Job;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Sense;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Table;
import org.jspecify.annotations.Nullable;

/**
 * Turns what is written in a job file into terms. What nobody wrote is absent; a reading without an instrument is no
 * evidence; an instrument out of calibration counts three times its uncertainty and cannot clear a gate (our rule).
 */
public final class Evidence {
    /** Every limit of error is taken as a rectangular distribution: u = a/√3 (JCGM 100:2008, 4.3.7). */
    private static final double RECTANGULAR = Math.sqrt(3);

    private static final double OUT_OF_CALIBRATION = 3;

    /** What a confirmation calls the published tables, where it speaks of them and not of a requirement set. */
    public static final String TABLES = "tables";

    private final Map<String, Instrument> instruments = new HashMap<>();
    private final Set<String> confirmedTables = new HashSet<>();
    private final LocalDate day;

    Evidence(Job job) {
        job.instruments().forEach(instrument -> instruments.put(instrument.id(), instrument));
        job.confirmations().stream()
                .filter(confirmation -> confirmation.set().equals(TABLES))
                .forEach(confirmation -> confirmedTables.addAll(confirmation.limits()));
        this.day = job.job().date();
    }

    /** A raw reading of a named instrument on a day; the day of the job where none is written. */
    public Term measured(
            String path,
            String name,
            String unit,
            @Nullable Quantity quantity,
            @Nullable String instrument,
            @Nullable LocalDate date) {
        if (quantity == null) {
            return Absent.unrecorded(path, name, unit);
        }
        Instrument used = instrument == null ? null : instruments.get(instrument);
        if (used == null) {
            return new Absent(path, name, Unit.of(unit), "no instrument is named for " + quantity);
        }
        if (quantity.sense() != Sense.VALUE) {
            return new Absent(path, name, Unit.of(unit), "reads " + quantity + ", a bound and not a value");
        }
        var reservations = new ArrayList<String>();
        double factor = calibration(used, date, reservations);
        var effects = effects(path, quantity, used, factor, reservations);
        return new Known(
                path,
                name,
                quantity,
                new Amount(quantity.si(), effects),
                Basis.MEASURED,
                title(used) + (date == null ? "" : ", " + date),
                reservations);
    }

    /** What calibration leaves in doubt, along the whole chain of references. */
    private double calibration(Instrument used, @Nullable LocalDate date, List<String> reservations) {
        LocalDate read = date == null ? day : date;
        double factor = 1;
        if (date == null) {
            reservations.add("the day of a reading with " + title(used) + " is not recorded");
        }
        for (Instrument link = used; link != null; link = reference(link)) {
            if (isOutOfCalibration(link, read)) {
                factor = OUT_OF_CALIBRATION;
                reservations.add(title(link) + " was out of calibration on " + read);
            } else if (link.due() == null) {
                reservations.add("no calibration is recorded for " + title(link));
            }
        }
        return factor;
    }

    /**
     * A reading that may be a bound, as {@code > 550 MΩ}: a lower bound stands for the least the figure can be. It can
     * show that a floor is reached, never that it is missed; whoever judges it asks {@link #isLowerBound}.
     */
    public Term measuredAtLeast(
            String path,
            String name,
            String unit,
            @Nullable Quantity quantity,
            @Nullable String instrument,
            @Nullable LocalDate date) {
        if (quantity == null || quantity.sense() != Sense.ABOVE) {
            return measured(path, name, unit, quantity, instrument, date);
        }
        var bare = new Quantity(Sense.VALUE, quantity.digits(), quantity.unit(), quantity.half(), quantity.text());
        return measured(path, name, unit, bare, instrument, date);
    }

    /** Whether a reading only says that the figure is above it. */
    public static boolean isLowerBound(@Nullable Quantity quantity) {
        return quantity != null && quantity.sense() == Sense.ABOVE;
    }

    /** A count or a voltage found by walking the recorded links; the words say what was found on the way. */
    public static Known solved(String path, String name, double number, String unit, String words) {
        Quantity quantity = Quantity.of(number, Unit.of(unit));
        return Known.exact(path, name, quantity, Basis.SOLVED, words);
    }

    /** Something a named person saw on a day: 1 if it was there, 0 if it was not. */
    public static Term observed(
            String path, String name, @Nullable Boolean there, @Nullable String by, @Nullable LocalDate date) {
        if (there == null) {
            return Absent.unrecorded(path, name, "1");
        }
        Quantity quantity = Quantity.of(there ? 1 : 0, Unit.ONE);
        String who = by == null || by.isBlank() ? "" : by.strip();
        var reservations = new ArrayList<String>();
        if (who.isEmpty()) {
            reservations.add("nobody is named who saw " + name);
        }
        if (date == null) {
            reservations.add("the day " + name + " was seen is not recorded");
        }
        String origin = (who.isEmpty() ? "nobody is named" : who) + (date == null ? "" : ", " + date);
        return new Known(path, name, quantity, Amount.exact(quantity.si()), Basis.OBSERVED, origin, reservations);
    }

    /** A figure published for cars of this kind, which nobody measured on this one: no better than its last digit. */
    public Term published(String path, String name, String unit, @Nullable Quantity quantity, String by) {
        Term term = rounded(path, name, unit, quantity, by);
        return term instanceof Known known
                ? new Known(
                        path,
                        name,
                        known.quantity(),
                        known.value(),
                        Basis.STATED,
                        known.origin(),
                        List.of(name + " is published and was not weighed on this car"))
                : term;
    }

    /** A figure somebody stands for: exact unless a ± is written. */
    public Term stated(String path, String name, String unit, @Nullable Quantity quantity, @Nullable String by) {
        if (quantity == null) {
            return Absent.unrecorded(path, name, unit);
        }
        if (quantity.sense() != Sense.VALUE) {
            return new Absent(path, name, Unit.of(unit), "is stated as " + quantity + ", a bound and not a value");
        }
        String who = by == null ? "" : by.strip();
        Map<String, Double> effects =
                quantity.half().isPresent() ? Map.of(path, quantity.half().getAsDouble() / RECTANGULAR) : Map.of();
        return new Known(
                path,
                name,
                quantity,
                new Amount(quantity.si(), effects),
                Basis.STATED,
                who.isEmpty() ? "nobody is named for it" : who,
                who.isEmpty() ? List.of("nobody is named who states " + name) : List.of());
    }

    /** A figure on somebody's sheet, rounded to the digits written unless a ± is. */
    public Term rounded(String path, String name, String unit, @Nullable Quantity quantity, @Nullable String by) {
        Term term = stated(path, name, unit, quantity, by);
        if (term instanceof Known known && known.quantity().half().isEmpty()) {
            double effect = known.quantity().halfLastDigit() / RECTANGULAR;
            var amount = new Amount(known.value().si(), Map.of(path, effect));
            return new Known(path, name, known.quantity(), amount, Basis.STATED, known.origin(), known.reservations());
        }
        return term;
    }

    /** A figure of a published table; it clears a gate only where the shop confirmed the table by name. */
    public Term tabled(Table table, String path, String name, @Nullable String key) {
        if (key == null) {
            return Absent.unrecorded(path, name, table.unit());
        }
        return table.find(key)
                .<Term>map(figure -> new Known(
                        table.name() + "[" + key + "]",
                        name,
                        Quantity.of(figure),
                        Amount.exact(Quantity.of(figure).si()),
                        Basis.STATED,
                        table.citation().toString(),
                        doubts(table)))
                .orElseGet(() ->
                        new Absent(path, name, Unit.of(table.unit()), "`" + key + "` is not in table " + table.name()));
    }

    /** Why a figure of a table does not clear a gate; nothing if the shop confirmed the table by name. */
    List<String> doubts(Table table) {
        return confirmedTables.contains(table.name())
                ? List.of()
                : List.of("table " + table.name() + " is not confirmed against the document");
    }

    private Map<String, Double> effects(
            String path, Quantity quantity, Instrument used, double factor, List<String> reservations) {
        var effects = new TreeMap<String, Double>();
        if (quantity.half().isPresent()) {
            effects.put(path, factor * quantity.half().getAsDouble() / RECTANGULAR);
            return effects;
        }
        Quantity fixed = used.fixed();
        if (fixed != null && fixed.unit().measuresLike(quantity.unit())) {
            double half = fixed.number() * fixed.unit().factor();
            effects.put(path, factor * half / RECTANGULAR);
        } else {
            effects.put(path, factor * quantity.halfLastDigit() / RECTANGULAR);
        }
        if (fixed == null && used.ofReading() == null) {
            reservations.add("no limit of error is recorded for " + title(used) + "; half the last digit is taken");
        }
        for (Instrument link = used; link != null; link = reference(link)) {
            Quantity share = link.ofReading();
            if (share != null) {
                double size = quantity.number() * quantity.unit().factor();
                effects.put("instruments[" + link.id() + "].of-reading", factor * size * share.si() / RECTANGULAR);
            }
        }
        return effects;
    }

    private @Nullable Instrument reference(Instrument instrument) {
        String reference = instrument.calibratedWith();
        return reference == null ? null : instruments.get(reference);
    }

    private static boolean isOutOfCalibration(Instrument instrument, LocalDate read) {
        LocalDate due = instrument.due();
        LocalDate calibrated = instrument.calibrated();
        return (due != null && due.isBefore(read)) || (calibrated != null && calibrated.isAfter(read));
    }

    private static String title(Instrument instrument) {
        String kind = instrument.kind();
        String serial = instrument.serial();
        return (kind == null ? instrument.id() : kind) + (serial == null ? "" : " " + serial);
    }
}
