package kerbfolio.car;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Job;
import kerbfolio.job.Part;
import kerbfolio.job.Position;
import kerbfolio.job.Removed;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/** What came out and what went in, with mass and place; and what that does to the car and to each axle. */
public final class Ledger {
    /** What the parts say the car should have gained. */
    public static final Formula CHANGE = Formula.of("Delta_m = sum(m_in) - sum(m_out)")
            .giving("change of mass by the ledger", "kg")
            .each("m_in", "mass fitted", "kg")
            .each("m_out", "mass removed", "kg")
            .from(Source.STATICS.clause("conservation of mass"))
            .build();

    /** Moments about the front axle: what each part puts on the rear axle. */
    public static final Formula REAR = Formula.of("Delta_R = (sum(m_in*x_in) - sum(m_out*x_out))/L")
            .giving("change on the rear axle by the ledger", "kg")
            .each("m_in", "mass fitted", "kg")
            .each("x_in", "place of it behind the front axle", "mm")
            .each("m_out", "mass removed", "kg")
            .each("x_out", "place of it behind the front axle", "mm")
            .with("L", "wheelbase", "mm")
            .needs("L > 0*[m]")
            .from(Source.STATICS.clause("moments about the front axle"))
            .build();

    /** What is not on the rear axle is on the front one. */
    public static final Formula FRONT = Formula.of("Delta_F = Delta_m - Delta_R")
            .giving("change on the front axle by the ledger", "kg")
            .with("Delta_m", "change of mass by the ledger", "kg")
            .with("Delta_R", "change on the rear axle by the ledger", "kg")
            .from(Source.STATICS.clause("balance of forces"))
            .build();

    /** Several things as one. */
    public static final Formula TOGETHER = Formula.of("m = sum(m_i)")
            .giving("mass together", "kg")
            .each("m_i", "mass of each", "kg")
            .from(Source.STATICS.clause("conservation of mass"))
            .build();

    /** One line: a thing with its mass and its place along the car. */
    public record Line(String id, String name, Term mass, Term x) {}

    private final List<Line> fitted = new ArrayList<>();
    private final List<Line> removed = new ArrayList<>();
    private final Working change;
    private final Working rear;
    private final Working front;

    Ledger(Evidence evidence, Job job, Term wheelbase) {
        for (Part part : job.parts()) {
            if (part.inside() != null) {
                continue; // weighed with what it sits in
            }
            String path = "parts[" + part.id() + "]";
            String name = part.name() == null ? part.id() : part.name();
            fitted.add(new Line(
                    part.id(),
                    name,
                    mass(evidence, path, name, part.mass(), part.instrument(), part.date(), part.massFrom()),
                    x(evidence, path, name, part.position(), job.job().preparedBy())));
        }
        for (Removed item : job.removed()) {
            String path = "removed[" + item.id() + "]";
            String name = item.name() == null ? item.id() : item.name();
            removed.add(new Line(
                    item.id(),
                    name,
                    mass(evidence, path, name, item.mass(), item.instrument(), item.date(), item.massFrom()),
                    x(evidence, path, name, item.position(), job.job().preparedBy())));
        }
        this.change = Working.fill(CHANGE)
                .each("m_in", masses(fitted, "parts", "what was fitted"))
                .each("m_out", masses(removed, "removed", "what was taken out"))
                .work();
        this.rear = Working.fill(REAR)
                .each("m_in", masses(fitted, "parts", "what was fitted"))
                .each("x_in", places(fitted, "parts", "what was fitted"))
                .each("m_out", masses(removed, "removed", "what was taken out"))
                .each("x_out", places(removed, "removed", "what was taken out"))
                .put("L", wheelbase)
                .work();
        this.front =
                Working.fill(FRONT).put("Delta_m", change).put("Delta_R", rear).work();
    }

    public List<Line> fitted() {
        return List.copyOf(fitted);
    }

    public List<Line> removed() {
        return List.copyOf(removed);
    }

    public boolean isEmpty() {
        return fitted.isEmpty() && removed.isEmpty();
    }

    public Working change() {
        return change;
    }

    public Working change(Axle axle) {
        return axle == Axle.FRONT ? front : rear;
    }

    /** What several lines weigh together. */
    public static Working together(List<Line> lines) {
        return Working.fill(TOGETHER)
                .each("m_i", lines.stream().map(Line::mass).toList())
                .work();
    }

    private static Term mass(
            Evidence evidence,
            String path,
            String name,
            @Nullable Quantity mass,
            @Nullable String instrument,
            @Nullable LocalDate date,
            @Nullable String from) {
        return instrument != null
                ? evidence.measured(path + ".mass", "mass of " + name, "kg", mass, instrument, date)
                : evidence.stated(path + ".mass", "mass of " + name, "kg", mass, from);
    }

    private static Term x(
            Evidence evidence, String path, String name, @Nullable Position position, @Nullable String by) {
        return evidence.stated(
                path + ".position.x", "place of " + name, "mm", position == null ? null : position.x(), by);
    }

    /** A side nobody wrote anything on is not a side without mass. */
    private static List<Term> masses(List<Line> lines, String section, String what) {
        return lines.isEmpty()
                ? List.of(new Absent(section, what, Unit.of("kg"), Absent.UNRECORDED))
                : lines.stream().map(Line::mass).toList();
    }

    private static List<Term> places(List<Line> lines, String section, String what) {
        return lines.isEmpty()
                ? List.of(new Absent(section, what, Unit.of("mm"), Absent.UNRECORDED))
                : lines.stream().map(Line::x).toList();
    }
}
