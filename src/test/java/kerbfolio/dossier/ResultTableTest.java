package kerbfolio.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.check.Verdict;
import kerbfolio.dossier.ResultTable.Row;
import kerbfolio.dossier.WorkingsPart.Compared;
import kerbfolio.dossier.WorkingsPart.Line;
import org.junit.jupiter.api.Test;

class ResultTableTest {
    private static final Shown ONE = new Shown("1", "", true);

    private static Line line(String subject, Verdict verdict, String said, String... doubts) {
        return new Line("asked/" + subject, subject, ONE, "at least 1", verdict, said, List.of(doubts), List.of());
    }

    private static Line compared(String subject, Verdict verdict, String limit, Verdict other) {
        return new Line(
                "asked/" + subject,
                subject,
                ONE,
                "at least 1",
                verdict,
                "",
                List.of(),
                List.of(new Compared("us-federal", limit, other, "49 CFR")));
    }

    private static List<String> subjects(ResultTable table) {
        return table.rows().stream().map(Row::subjects).toList();
    }

    @Test
    void rowsOfOneVerdictAndFigureAreJoinedAndThoseNotMetNever() {
        ResultTable table = ResultTable.of(List.of(
                line("front", Verdict.MET, "loop"),
                line("lid", Verdict.NOT_MET, "no loop"),
                line("rear", Verdict.MET, "loop"),
                line("side", Verdict.NOT_MET, "no loop"),
                line("top", Verdict.MET, "another loop")));
        assertEquals(List.of("front, rear", "lid", "side", "top"), subjects(table));
    }

    @Test
    void aRemarkThatOnlyNamesItsSubjectDoesNotKeepRowsApart() {
        ResultTable table = ResultTable.of(List.of(
                line("c-plus", Verdict.MET_UNCONFIRMED, "", "nobody saw orange on c-plus"),
                line("c-plus-two", Verdict.MET_UNCONFIRMED, "", "nobody saw orange on c-plus-two")));
        assertEquals(List.of("c-plus, c-plus-two"), subjects(table));
        assertEquals(List.of("Unconfirmed: nobody saw orange on it"), table.notes());
    }

    @Test
    void whatEveryRowHasInDoubtStandsBelowAndWhatSomeHaveGetsALetter() {
        ResultTable table = ResultTable.of(List.of(
                line("a", Verdict.MET_UNCONFIRMED, "seen", "limit unconfirmed", "table not read"),
                line("b", Verdict.MET_UNCONFIRMED, "read", "limit unconfirmed", "table not read", "meter overdue"),
                line("c", Verdict.MET_UNCONFIRMED, "", "limit unconfirmed")));
        assertEquals(
                List.of("seen (a)", "read; meter overdue (a)", ""),
                table.rows().stream().map(Row::remark).toList());
        // That the limit is unconfirmed is said beside the limit.
        assertEquals(List.of("(a) table not read"), table.notes());
    }

    @Test
    void whatSeveralRowsLackIsNamedOnceEach() {
        ResultTable table = ResultTable.of(List.of(
                line("a", Verdict.NO_EVIDENCE, "not recorded: size, length"),
                line("b", Verdict.NO_EVIDENCE, "not recorded: size")));
        assertEquals(1, table.rows().size());
        assertEquals("not recorded: size, length", table.rows().get(0).remark());
    }

    @Test
    void aSetThatAgreesInEveryRowIsSaidOnceAndOneThatDiffersInItsRows() {
        assertEquals(
                List.of("For comparison, us-federal: the same limit, the same verdict for every row"),
                ResultTable.of(List.of(compared("a", Verdict.MET, "at least 1", Verdict.MET)))
                        .notes());
        assertEquals(
                List.of("For comparison, us-federal: at least 2, the same verdict for every row"),
                ResultTable.of(List.of(compared("a", Verdict.NOT_MET, "at least 2", Verdict.NOT_MET)))
                        .notes());
        ResultTable differing = ResultTable.of(List.of(
                compared("a", Verdict.MET, "at least 1", Verdict.MET),
                compared("b", Verdict.MET, "at least 1", Verdict.MET_UNCONFIRMED)));
        assertEquals(List.of(), differing.notes());
        assertEquals(2, differing.rows().size());
        assertEquals(1, differing.rows().get(1).compared().size());
    }
}
