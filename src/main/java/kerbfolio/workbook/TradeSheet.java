package kerbfolio.workbook;

import java.util.List;
import kerbfolio.quantity.Unit;
import org.apache.poi.ss.util.CellRangeAddress;

/**
 * The sheet of a trade, or of a part of it: one block per examination, each after the lists and workings it leans on. What was found stands
 * in the same columns in every block, what it was found from to the right of it.
 */
final class TradeSheet {
    static final int SUBJECT = 0;
    static final int RESULT = 1;
    static final int UNIT = 2;
    static final int REACH = 3;
    static final int BOUND = 4;
    static final int LIMIT = 5;
    static final int MARGIN = 6;
    static final int VERDICT = 7;
    static final int AT_ISSUE = 8;
    static final int INPUTS = 9;

    private static final int FIRST_BLOCK = 3;
    private static final int HEAD = 1;
    private static final int[] WIDTHS = {36, 13, 9, 10, 9, 10, 10, 19, 18};
    private static final int INPUT_WIDTH = 13;

    private final String words;
    private final List<Block> blocks;

    TradeSheet(String words, List<Block> blocks) {
        this.words = words;
        this.blocks = List.copyOf(blocks);
    }

    String name() {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** Enters where every figure of this sheet will stand. */
    void settle(AddressBook addresses) {
        int top = FIRST_BLOCK;
        for (Block block : blocks) {
            block.settle(addresses, name(), top);
            top += block.height();
        }
    }

    void write(AddressBook addresses, Binding binding) {
        int inputs = blocks.stream().mapToInt(Block::inputs).max().orElse(0);
        int[] widths = new int[INPUTS + inputs];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = i < INPUTS ? WIDTHS[i] : INPUT_WIDTH;
        }
        Pen pen = binding.sheet(name(), HEAD, widths);
        pen.text(0, 0, name() + ": figures, limits, margins and verdicts are live", Look.TITLE);
        pen.texts(HEAD, SUBJECT, Look.HEAD, "subject");
        pen.texts(HEAD, RESULT, Look.FIGURE_HEAD, "figure");
        pen.texts(HEAD, UNIT, Look.HEAD, "unit");
        pen.texts(HEAD, REACH, Look.FIGURE_HEAD, "U (k = 2), at issue, not live");
        pen.texts(HEAD, BOUND, Look.HEAD, "bound");
        pen.texts(HEAD, LIMIT, Look.FIGURE_HEAD, "limit");
        pen.texts(HEAD, MARGIN, Look.FIGURE_HEAD, "margin to the limit");
        pen.texts(HEAD, VERDICT, Look.HEAD, "verdict, live", "verdict at issue");
        for (int i = 0; i < inputs; i++) {
            pen.text(HEAD, INPUTS + i, i == 0 ? "found from" : "", Look.HEAD);
        }
        int top = FIRST_BLOCK;
        for (Block block : blocks) {
            block.write(addresses, pen, top);
            top += block.height();
        }
        int first = FIRST_BLOCK + 1;
        Highlights.verdicts(pen.sheet(), FIRST_BLOCK, top, VERDICT);
        // A verdict that an edited figure has changed is set off from the one at issue.
        Highlights.cells(
                pen.sheet(), new CellRangeAddress(FIRST_BLOCK, top, VERDICT, VERDICT), "$H" + first + "<>$I" + first);
    }

    /** A symbol with its unit, as a column head. */
    static String symbol(String symbol, Unit unit) {
        return unit.text().isEmpty() ? symbol : symbol + " [" + unit.text() + "]";
    }
}
