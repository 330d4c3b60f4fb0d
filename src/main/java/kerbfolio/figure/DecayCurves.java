package kerbfolio.figure;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.car.Capacitors;
import kerbfolio.car.Car;
import kerbfolio.car.Discharge;
import kerbfolio.car.Wait;
import kerbfolio.dossier.Dossier;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Part;

/** How the voltage of each bus falls when it is left alone, and how long to wait. */
final class DecayCurves implements Figure {
    private static final double LEFT = 30;
    private static final double TOP = 16;
    private static final double BOTTOM = 186;
    private static final double HEAD = 34;
    private static final double LINE = 10;
    private static final double FOOT = 6;
    private static final double EARLY = 20;
    private static final double LATE = 1.3;
    private static final double MINUTE = 60;
    private static final Line[] LINES = {Line.FIRM, Line.DASHED, Line.THIN, Line.CENTRE};

    private final Value first;
    private final Value bound;
    private final List<Bus> buses;
    private final List<Read> reads;
    private final Wait wait;

    /** A bus with its figures; its curve where all of them are known. */
    private record Bus(String name, Value capacitance, Value bleed, Value time) {
        String words(Value first, Value bound) {
            return name + ": " + (capacitance.isKnown() ? capacitance.text() : "capacitance not known") + ", "
                    + (bleed.isKnown() ? bleed.text() : "bleed not known")
                    + (time.isKnown()
                            ? ", from " + first.text() + " down to " + bound.text() + " in " + time.text()
                            : ", time not known");
        }
    }

    /** Two voltages somebody read. */
    private record Read(String name, Value firstTime, Value firstVolts, Value secondTime, Value secondVolts) {
        String words() {
            return name + ": " + firstVolts.text() + " at " + firstTime.text() + ", " + secondVolts.text() + " at "
                    + secondTime.text();
        }
    }

    private DecayCurves(Dossier dossier) {
        Car car = dossier.car();
        var units = dossier.units();
        Term limit = VoltageClass.term(dossier);
        first = Value.of(car.pack().highestVoltage(), units);
        bound = Value.of(limit, units);
        List<Discharge> discharges = car.discharges(limit);
        buses = discharges.stream()
                .map(discharge -> {
                    Capacitors capacitors = car.capacitors(discharge.bus());
                    return new Bus(
                            discharge.bus().parts().stream().map(Part::title).collect(Collectors.joining(", ")),
                            Value.of(capacitors.total(), units),
                            Value.of(capacitors.bleed(), units),
                            Value.of(discharge.computed(), units));
                })
                .toList();
        reads = car.decayReadings(limit).stream()
                .flatMap(reading -> read(dossier, reading).stream())
                .toList();
        wait = car.waitFor(limit);
    }

    /** Only a reading that counts is drawn: the bus was left alone, and both points are known. */
    private static Optional<Read> read(Dossier dossier, Discharge.Reading reading) {
        if (reading.time() instanceof Working time
                && time.amount().isPresent()
                && input(time, "tau") instanceof Working constant) {
            return Optional.of(new Read(
                    reading.name(),
                    Value.of(input(constant, "t_1"), dossier.units()),
                    Value.of(input(constant, "U_1"), dossier.units()),
                    Value.of(input(constant, "t_2"), dossier.units()),
                    Value.of(input(constant, "U_2"), dossier.units())));
        }
        return Optional.empty();
    }

    private static Term input(Working working, String symbol) {
        List<Term> terms = working.inputs().get(symbol);
        if (terms == null) {
            throw new IllegalStateException("a decay without " + symbol);
        }
        return terms.get(0);
    }

    static Optional<DecayCurves> of(Dossier dossier) {
        var figure = new DecayCurves(dossier);
        return figure.bound.isKnown() && figure.drawn().findAny().isPresent() ? Optional.of(figure) : Optional.empty();
    }

    /** A bus that begins under the bound has no curve. */
    private Stream<Bus> drawn() {
        return buses.stream().filter(bus -> bus.time().isKnown() && bus.time().si() > 0);
    }

    @Override
    public String id() {
        return "decay-curves";
    }

    @Override
    public String caption() {
        Bus slowest = drawn().max(
                        (a, b) -> Double.compare(a.time().si(), b.time().si()))
                .orElseThrow();
        long unknown = buses.stream().filter(bus -> !bus.time().isKnown()).count();
        return Words.sentences(
                "Left alone, the slowest bus (" + slowest.name() + ") falls from " + first.text() + " to "
                        + bound.text() + " in " + slowest.time().text() + ".",
                unknown == 0
                        ? ""
                        : unknown + (unknown == 1 ? " bus is" : " buses are")
                                + " not drawn: a capacitance or a bleed resistance is not recorded.",
                "Wait " + wait.minutes() + " min: " + wait.reason().replaceFirst(" \\(.*", "")
                        + ". The wait is not the proof, the reading is.");
    }

    @Override
    public String alternative() {
        return Words.sentences(
                "Voltage over time, time logarithmic.",
                lines().stream().map(line -> line + ".").collect(Collectors.joining(" ")),
                "Line at " + bound.text() + "; wait " + wait.minutes() + " min.");
    }

    private List<String> lines() {
        var lines = new ArrayList<String>();
        buses.forEach(bus -> lines.add(bus.words(first, bound)));
        reads.forEach(read -> lines.add("crosses, " + read.words()));
        return lines;
    }

    @Override
    public double width() {
        return Pen.WIDTH;
    }

    @Override
    public double height() {
        return BOTTOM + HEAD + LINE * lines().size() + FOOT;
    }

    @Override
    public void draw(Graphics2D canvas, double width, double height) {
        Pen pen = Pen.on(canvas, width, height, this);
        double least = drawn().mapToDouble(bus -> bus.time().si()).min().orElse(1) / EARLY;
        double most = Math.max(
                wait.minutes() * MINUTE,
                Stream.concat(
                                drawn().map(bus -> bus.time().si()),
                                reads.stream().map(read -> read.secondTime().si()))
                        .mapToDouble(Double::doubleValue)
                        .max()
                        .orElse(1));
        var across = new Axis(Math.pow(10, Math.floor(Math.log10(least))), LATE * most, true, LEFT, Pen.WIDTH - 10);
        Axis up = Axis.upTo(Math.max(first.si(), bound.si()), BOTTOM, TOP);
        var chart = new Chart(pen, across, up);
        chart.grid("seconds after the bus is left alone, logarithmic", "volts between the poles");
        chart.level(bound.text(), bound.si(), Line.DASHED);
        chart.upright("wait " + wait.minutes() + " min", wait.minutes() * MINUTE, 0, Line.FIRM);
        List<Bus> curves = drawn().toList();
        for (Bus bus : curves) {
            double constant = bus.time().si() / Math.log(first.si() / bound.si());
            chart.curve(
                    String.valueOf(buses.indexOf(bus) + 1),
                    time -> first.si() * Math.exp(-time / constant),
                    0,
                    Double.MAX_VALUE,
                    LINES[buses.indexOf(bus) % LINES.length]);
        }
        curves.forEach(bus -> chart.dot(bus.time().si(), bound.si(), true));
        reads.forEach(read -> {
            chart.cross(read.firstTime().si(), read.firstVolts().si());
            chart.cross(read.secondTime().si(), read.secondVolts().si());
        });
        double last = curves.stream().mapToDouble(bus -> bus.time().si()).max().orElse(0);
        curves.forEach(bus -> chart.note(
                bus.time().text(), bus.time().si(), bound.si(), bus.time().si() < last));
        chart.finish();
        double y = BOTTOM + HEAD;
        for (int i = 0; i < lines().size(); i++) {
            if (i < buses.size()) {
                pen.left(String.valueOf(i + 1), 0, y, Type.STRONG);
            } else {
                pen.left("\u00d7", 0, y, Type.STRONG);
            }
            pen.left(pen.fitted(lines().get(i), Pen.WIDTH - 14, Type.SMALL), 14, y, Type.SMALL);
            y += LINE;
        }
    }
}
