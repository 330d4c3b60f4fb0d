package kerbfolio.checks.highvoltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import kerbfolio.car.Car;
import kerbfolio.car.Evidence;
import kerbfolio.check.Limit;
import kerbfolio.check.Limits;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Connector;
import kerbfolio.job.Enclosure;
import kerbfolio.job.IpCode;
import kerbfolio.job.Opening;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What keeps a hand from live parts at one case or connector.
 *
 * @param path of the case or connector
 * @param name in words
 * @param opensWith what it takes to open or part it
 * @param openPath of the degree of protection once it is open
 * @param open that degree
 * @param locks what else may guard it; empty for a case, which has neither a lock nor pins that go dead
 * @param from who states it
 */
record Barrier(
        String path,
        String name,
        @Nullable Opening opensWith,
        String openPath,
        @Nullable String open,
        @Nullable Connector locks,
        @Nullable String from) {

    static Barrier of(String path, String name, @Nullable Enclosure enclosure) {
        return new Barrier(
                path,
                name,
                enclosure == null ? null : enclosure.opensWith(),
                path + ".open-protection",
                enclosure == null ? null : enclosure.openProtection(),
                null,
                enclosure == null ? null : enclosure.from());
    }

    static Barrier of(String path, Connector connector) {
        return new Barrier(
                path,
                connector.id(),
                connector.opensWith(),
                path + ".open",
                connector.open(),
                connector,
                connector.from());
    }

    /** Who can reach what is live, as a numeral: 2 keeps out a finger, 4 a wire. */
    static Term access(Car car, String path, String name, @Nullable String code, @Nullable String from) {
        if (code == null) {
            return Absent.unrecorded(path, name, "1");
        }
        OptionalInt access = IpCode.of(code).map(IpCode::access).orElse(OptionalInt.empty());
        return access.isEmpty()
                ? new Absent(path, name, Unit.ONE, code + " does not say what is kept from live parts")
                : car.evidence().stated(path, name + ", " + code, "1", Quantity.of(access.getAsInt(), Unit.ONE), from);
    }

    /** How many things guard live parts once it is open or when somebody tries; one is enough. */
    Term guards(Car car, String degree, Limits limits) {
        var guards = new Guards();
        guards.note(opensWith == null, opensWith == Opening.TOOL, "opens only with a tool", ".opens-with");
        Term reach = access(car, openPath, "protection of " + name + " once open", open, from);
        guards.judge(reach, limits, degree, "live parts stay behind " + open);
        if (locks != null) {
            Boolean locked = locks.locked();
            guards.doubt(locked == null, Boolean.TRUE.equals(locked), "has a lock", ".locked");
            Quantity dead = locks.deadWithin();
            Term time = car.evidence().stated(path + ".dead-within", "time to dead of " + name, "s", dead, from);
            guards.judge(time, limits, "touch-dead-time", "dead within " + dead);
        }
        return guards.count();
    }

    /** What was found to guard live parts, what is not known, and what is in doubt of all that was found. */
    private final class Guards {
        private final List<String> found = new ArrayList<>();
        private final List<Absent> unknown = new ArrayList<>();
        private final List<String> doubts = new ArrayList<>();
        private boolean isFirm;

        void note(boolean isUnknown, boolean isThere, String guard, String key) {
            if (isUnknown) {
                unknown.add(Absent.unrecorded(path + key, "what guards live parts of " + name, "1"));
            } else if (isThere) {
                found.add(guard);
                isFirm = true;
            }
        }

        /** A guard that is there and not known to be enough by itself. */
        void doubt(boolean isUnknown, boolean isThere, String guard, String key) {
            boolean wasFirm = isFirm;
            note(isUnknown, isThere, guard, key);
            isFirm = wasFirm;
            if (isThere) {
                doubts.add("that " + name + " " + guard + " is not known to be enough by itself");
            }
        }

        void judge(Term term, Limits limits, String key, String guard) {
            Optional<Limit> limit = limits.find(key);
            Verdict verdict = limit.map(bound -> bound.judge(term)).orElse(Verdict.NO_LIMIT);
            unknown.addAll(term.missing());
            if (verdict == Verdict.MET || verdict == Verdict.MET_UNCONFIRMED) {
                found.add(guard);
                isFirm |= verdict == Verdict.MET;
                doubts.addAll(limit.orElseThrow().reservations(term));
            }
        }

        Term count() {
            if (found.isEmpty() && !unknown.isEmpty()) {
                return unknown.get(0);
            }
            String words =
                    found.isEmpty() ? "opened by hand, and nothing guards what is live" : String.join("; ", found);
            String what = "what guards live parts of " + name;
            Term count = Evidence.solved(path, what, found.size(), "1", words);
            if (from == null || from.isBlank()) {
                count = Cases.doubted(count, "nobody is named who states " + what);
            }
            for (String doubt : isFirm ? List.<String>of() : doubts) {
                count = Cases.doubted(count, doubt);
            }
            return count;
        }
    }
}
