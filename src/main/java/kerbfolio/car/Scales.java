package kerbfolio.car;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Axles;
import kerbfolio.job.Corners;
import kerbfolio.job.State;
import kerbfolio.job.Weighing;
import kerbfolio.quantity.Quantity;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/** One weighing as terms: corners where they were taken, axles and the whole car measured or summed. */
public final class Scales {
    /** The two wheels of an axle. */
    static final Formula AXLE = Formula.of("m_a = m_L + m_R")
            .giving("axle mass", "kg")
            .with("m_L", "left wheel", "kg")
            .with("m_R", "right wheel", "kg")
            .from(Source.STATICS.whole())
            .build();

    /** The whole car on its two axles. */
    static final Formula TOTAL = Formula.of("m = m_F + m_R")
            .giving("mass of the car", "kg")
            .with("m_F", "front axle", "kg")
            .with("m_R", "rear axle", "kg")
            .from(Source.STATICS.whole())
            .build();

    private final String words;
    private final @Nullable Weighing weighing;
    private final Map<Corner, Term> corners = new EnumMap<>(Corner.class);
    private final Map<Axle, Term> axles = new EnumMap<>(Axle.class);
    private final Term total;

    /**
     * @param key the weighing's key in the job file
     * @param words when it was, in words
     */
    Scales(Evidence evidence, String key, String words, @Nullable Weighing weighing) {
        this.words = words;
        this.weighing = weighing;
        var entry = new Entry(evidence, "weighings." + key, words, weighing);
        for (Corner corner : Corner.values()) {
            corners.put(corner, entry.term("corners." + corner.key(), corner.toString(), corner(weighing, corner)));
        }
        for (Axle axle : Axle.values()) {
            axles.put(axle, axleTerm(entry, axle));
        }
        this.total = totalTerm(entry);
    }

    /** When this weighing was, in words: as received, as delivered. */
    public String words() {
        return words;
    }

    public Term corner(Corner corner) {
        return known(corners, corner);
    }

    public Term axle(Axle axle) {
        return known(axles, axle);
    }

    public Term total() {
        return total;
    }

    /** Whether the four wheels were weighed one by one. */
    public boolean hasCorners() {
        return weighing != null && weighing.corners() != null;
    }

    /** Published figures, which nobody measured on this car. */
    public boolean isStated() {
        return weighing != null && weighing.statedBy() != null;
    }

    /** What was in the car that is no part of it, in words; empty if occupants or ballast are not recorded. */
    public Optional<String> aboard() {
        State state = weighing == null ? null : weighing.state();
        if (state == null || state.occupants() == null || state.ballast() == null) {
            return Optional.empty();
        }
        var words = new StringBuilder();
        add(words, state.occupants(), "occupants ");
        add(words, state.ballast(), "ballast ");
        return Optional.of(words.toString());
    }

    private static void add(StringBuilder words, @Nullable Quantity quantity, String what) {
        if (quantity != null && quantity.si() != 0) {
            words.append(words.isEmpty() ? "" : ", ").append(what).append(quantity);
        }
    }

    private Term axleTerm(Entry entry, Axle axle) {
        if (hasCorners()) {
            boolean front = axle == Axle.FRONT;
            return Working.fill(AXLE)
                    .named(axle + " " + words)
                    .put("m_L", corner(front ? Corner.LEFT_FRONT : Corner.LEFT_REAR))
                    .put("m_R", corner(front ? Corner.RIGHT_FRONT : Corner.RIGHT_REAR))
                    .work();
        }
        return entry.term("axles." + axle.key(), axle.toString(), axle(weighing, axle));
    }

    private Term totalTerm(Entry entry) {
        if (weighing != null && weighing.total() != null) {
            return entry.term("total", "whole car", weighing.total());
        }
        return Working.fill(TOTAL)
                .named("whole car " + words)
                .put("m_F", axle(Axle.FRONT))
                .put("m_R", axle(Axle.REAR))
                .work();
    }

    private static <K> Term known(Map<K, Term> terms, K key) {
        Term term = terms.get(key);
        if (term == null) {
            throw new IllegalStateException("no term for " + key);
        }
        return term;
    }

    private static @Nullable Quantity axle(@Nullable Weighing weighing, Axle axle) {
        Axles axles = weighing == null ? null : weighing.axles();
        return axles == null ? null : axle == Axle.FRONT ? axles.front() : axles.rear();
    }

    private static @Nullable Quantity corner(@Nullable Weighing weighing, Corner corner) {
        Corners corners = weighing == null ? null : weighing.corners();
        if (corners == null) {
            return null;
        }
        return switch (corner) {
            case LEFT_FRONT -> corners.leftFront();
            case RIGHT_FRONT -> corners.rightFront();
            case LEFT_REAR -> corners.leftRear();
            case RIGHT_REAR -> corners.rightRear();
        };
    }

    /** Makes terms of one weighing: measured with its instrument, or stated by its publisher. */
    private record Entry(
            Evidence evidence,
            String path,
            String words,
            @Nullable Weighing weighing) {
        Term term(String key, String what, @Nullable Quantity quantity) {
            String at = path + "." + key;
            String name = what + " " + words;
            if (weighing == null) {
                return Absent.unrecorded(at, name, "kg");
            }
            String statedBy = weighing.statedBy();
            return statedBy != null
                    ? evidence.published(at, name, "kg", quantity, statedBy)
                    : evidence.measured(at, name, "kg", quantity, weighing.instrument(), weighing.date());
        }
    }
}
