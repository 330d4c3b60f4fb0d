package kerbfolio.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import kerbfolio.dossier.WorkingsPart;
import kerbfolio.fingerprint.Proof;
import kerbfolio.release.GateReport;
import kerbfolio.release.Reason;

/** Findings and gates as plain text of at most 100 columns. */
final class Terminal {
    private static final int REASONS = 6;
    private static final int COLUMNS = 100;

    private Terminal() {}

    static String findings(WorkingsPart workings) {
        var text = new StringBuilder();
        for (WorkingsPart.Page page : workings.pages()) {
            text.append(page.question()).append('\n');
            var rows = new ArrayList<String[]>();
            for (WorkingsPart.Line line : page.lines()) {
                rows.add(new String[] {
                    line.subject(),
                    line.value().large(),
                    page.isJudged() ? line.limit() : "",
                    line.verdict().toString()
                });
            }
            table(rows, text);
        }
        return text.toString();
    }

    static String gates(List<GateReport> gates) {
        var text = new StringBuilder("Gates\n");
        var rows = new ArrayList<String[]>();
        for (GateReport gate : gates) {
            rows.add(new String[] {
                gate.gate().toString(), gate.state().toString(), gate.gate().meaning()
            });
        }
        table(rows, text);
        for (GateReport gate : gates) {
            gate.reasons().stream()
                    .limit(REASONS)
                    .map(Reason::text)
                    .forEach(reason -> wrap(gate.gate() + ": " + reason, text));
            if (gate.reasons().size() > REASONS) {
                text.append("  ")
                        .append(gate.gate())
                        .append(": and ")
                        .append(gate.reasons().size() - REASONS)
                        .append(" more\n");
            }
        }
        return text.toString();
    }

    /** What is said of a PDF. */
    static String proof(Proof proof) {
        var text = new StringBuilder(proof.answer().toString()).append('\n');
        Stream.concat(proof.found().stream(), Stream.of(proof.todo())).forEach(line -> wrap(line, text));
        return text.toString();
    }

    /** Without the signs that would command a terminal, or turn the direction of its text. */
    private static String mild(String line) {
        return line.replaceAll("[\\p{Cc}\\p{Cf}]", "");
    }

    /** A line broken at its spaces, the rest of it set in. */
    private static void wrap(String line, StringBuilder text) {
        String indent = "  ";
        int column = 0;
        for (String word : mild(line).split(" ")) {
            if (column > 0 && column + 1 + word.length() > COLUMNS) {
                text.append('\n');
                indent = "      ";
                column = 0;
            }
            String before = column == 0 ? indent : " ";
            text.append(before).append(word);
            column += before.length() + word.length();
        }
        text.append('\n');
    }

    private static void table(List<String[]> rows, StringBuilder text) {
        int columns = rows.isEmpty() ? 0 : rows.get(0).length;
        var widths = new int[columns];
        for (String[] row : rows) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], row[i].length());
            }
        }
        for (String[] row : rows) {
            var line = new StringBuilder(" ");
            for (int i = 0; i < columns; i++) {
                line.append(' ').append(row[i]).append(" ".repeat(widths[i] - row[i].length() + 1));
            }
            text.append(mild(line.toString()).stripTrailing()).append('\n');
        }
        text.append('\n');
    }
}
