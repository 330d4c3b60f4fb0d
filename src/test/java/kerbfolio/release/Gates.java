package kerbfolio.release;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.stream.Stream;
import kerbfolio.JobText;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Examination;
import kerbfolio.check.Limits;
import kerbfolio.check.RequirementSet;
import kerbfolio.job.Gate;
import kerbfolio.job.Waiver;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.RecordReader;

/** The gates of a job with the checks and the evidence a test chooses. */
final class Gates {
    static final String ASKS_FOR_A = "energise: { first: [a] }";
    static final String PAPER = "{ kind: authority-paper, number: \"7\", date: 2026-09-30 }";

    /** Asked of every gate a test does not speak of; it always has its figure. */
    static final Stub CALM = Stub.working("calm", Stub.MET);

    private static final RequirementSet HOUSE = set(
            "{ set: house, title: House, limits: { margin: { meaning: margin, bound: at least, value: 0 kg, document:"
                    + " own, own-rule: yes } } }");

    private Gates() {}

    static Release release(String evidence, Check... checks) {
        return release(JobText.blank(), evidence, checks);
    }

    static Release release(JobText text, String evidence, Check... checks) {
        String asked = Stream.of("transport", "energise", "inspection")
                .filter(gate -> !evidence.contains(gate))
                .map(gate -> gate + ": { first: [calm] }")
                .reduce(evidence, (all, more) -> all.isEmpty() ? more : all + ", " + more);
        return asking(text, asked, Stream.concat(Stream.of(checks), Stream.of(CALM)));
    }

    /** Exactly this evidence and these checks. */
    static Release asking(JobText text, String evidence, Stream<Check> checks) {
        var job = text.job();
        RequirementSet home = set("{ set: home, title: Home, evidence: { " + evidence + " } }");
        var limits = new Limits(home, HOUSE, List.of(), job);
        var car = new Car(job);
        return new Release(
                job, checks.map(check -> Examination.of(check, car, limits)).toList(), limits);
    }

    private static RequirementSet set(String text) {
        try {
            return RecordReader.read("set.yaml", text.getBytes(UTF_8), RequirementSet.class)
                    .value();
        } catch (Complaints e) {
            throw new IllegalArgumentException(e);
        }
    }

    static GateReport gate(Release release, Gate gate) {
        return release.gates().stream()
                .filter(report -> report.gate() == gate)
                .findFirst()
                .orElseThrow();
    }

    static GateState state(Release release, Gate gate) {
        return gate(release, gate).state();
    }

    static List<String> reasons(Release release, Gate gate) {
        return gate(release, gate).reasons().stream().map(Reason::text).toList();
    }

    /** Who lets something pass that the gate leans on. */
    static List<String> waivers(Release release, Gate gate) {
        return gate(release, gate).waivers().stream().map(Waiver::by).toList();
    }
}
