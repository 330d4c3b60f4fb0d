package kerbfolio.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Examination;
import kerbfolio.check.Finding;
import kerbfolio.check.Limit;
import kerbfolio.check.Limits;
import kerbfolio.check.RequirementSets;
import kerbfolio.checks.CheckList;
import kerbfolio.formula.Declared;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Plain;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Job;
import kerbfolio.job.JobFile;
import kerbfolio.reading.Complaint;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.RecordReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints what a check asks, its formula, symbols, limit and sources. */
@Command(
        name = "explain",
        description = "Prints a check's question, formula, symbols, limit and source.",
        mixinStandardHelpOptions = true)
final class Explain implements Callable<Integer> {
    private static final String BLANK_NAME = "blank";
    private static final String BLANK =
            "{kerbfolio: 1, job: {number: x, revision: x, date: 2000-01-01, tier: full, home-set: '%s'}}";

    @Parameters(paramLabel = "CHECK", arity = "0..1", description = "name of the check; without it, all names")
    private String name = "";

    @Option(names = "--set", paramLabel = "SET", description = "requirement set whose limit is shown (default: un-ece)")
    private String set = RequirementSets.DEFAULT;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        if (name.isEmpty()) {
            CheckList.ALL.forEach(check -> out.println(check.id() + "  " + check.question()));
            out.flush();
            return Kerbfolio.FREE;
        }
        for (Check check : CheckList.ALL) {
            if (check.id().equals(name)) {
                byte[] blank = BLANK.formatted(set).getBytes(UTF_8);
                var parsed = RecordReader.read(BLANK_NAME, blank, Job.class);
                var nothing = new JobFile(parsed.value(), Path.of(BLANK_NAME), blank, parsed.places());
                try {
                    explain(check, nothing.job(), RequirementSets.limits(nothing), out);
                } catch (Complaints e) {
                    return refuse(e);
                }
                out.flush();
                return Kerbfolio.FREE;
            }
        }
        spec.commandLine().getErr().println("There is no check `" + name + "`; `kerbfolio explain` lists them.");
        return Kerbfolio.WRONG;
    }

    /** What is wrong with the set that was named, without the place it has in a job nobody wrote. */
    private int refuse(Complaints complaints) throws Complaints {
        Complaint first = complaints.list().get(0);
        if (!first.file().equals(BLANK_NAME)) {
            throw complaints;
        }
        spec.commandLine().getErr().println("--set: " + first.text());
        return Kerbfolio.WRONG;
    }

    /** A check shows itself on a job with nothing in it: every formula stands, every figure is absent. */
    private static void explain(Check check, Job nothing, Limits limits, PrintWriter out) {
        out.println(check.question());
        out.println("  trade: " + check.trade()
                + check.gate().map(gate -> "; holds: " + gate).orElse("; holds no gate"));
        List<Finding> findings = Examination.of(check, new Car(nothing), limits).rows().stream()
                .map(Examination.Row::finding)
                .toList();
        findings.stream()
                .flatMap(finding -> behind(finding.result()))
                .filter(Working.class::isInstance)
                .map(term -> ((Working) term).formula())
                .distinct()
                .forEach(formula -> print(formula, out));
        Stream.concat(
                        findings.stream().flatMap(finding -> finding.limit().stream()),
                        findings.stream()
                                .flatMap(finding -> behind(finding.result()))
                                .filter(Limit.class::isInstance)
                                .map(Limit.class::cast))
                .distinct()
                .forEach(limit -> print(limit, out));
    }

    /** A figure and every figure it leans on, itself first. */
    private static Stream<Term> behind(Term term) {
        Term bare = term instanceof Plain plain ? plain.of() : term;
        Stream<Term> inputs = bare instanceof Working working
                ? working.inputs().values().stream().flatMap(List::stream)
                : Stream.empty();
        return Stream.concat(Stream.of(bare), inputs.flatMap(Explain::behind));
    }

    private static void print(Formula formula, PrintWriter out) {
        out.println("  formula: " + formula.text());
        print(formula.result(), out);
        formula.symbols().forEach(symbol -> print(symbol, out));
        formula.constants()
                .forEach(c -> out.println("    " + c.symbol() + " = " + c.value() + "  (" + c.citation() + ")"));
        formula.needs().forEach(need -> out.println("    needs " + need));
        formula.citations().forEach(citation -> out.println("  source: " + citation));
    }

    private static void print(Declared symbol, PrintWriter out) {
        String unit = symbol.unit().text().isEmpty() ? "" : " [" + symbol.unit() + "]";
        out.println("    " + symbol.symbol() + "  " + symbol.meaning() + unit + (symbol.each() ? ", a list" : ""));
    }

    private static void print(Limit limit, PrintWriter out) {
        out.println("  limit (" + limit.set() + "): " + limit.bound() + " " + limit.value() + ", " + limit.meaning());
        out.println("    " + limit.origin());
    }
}
