package kerbfolio.pdf;

import com.lowagie.text.pdf.PdfName;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What a part of the document is: the standard structure types this program uses (ISO 32000-1, 14.8.4), and their order. */
enum Role {
    DOCUMENT("Document"),
    PART("Part"),
    SECT("Sect"),
    DIV("Div"),
    BLOCK_QUOTE("BlockQuote"),
    H1("H1"),
    H2("H2"),
    H3("H3"),
    H4("H4"),
    H5("H5"),
    H6("H6"),
    P("P"),
    FIGURE("Figure"),
    TOC("TOC"),
    TOCI("TOCI"),
    L("L"),
    LI("LI"),
    L_BODY("LBody"),
    TABLE("Table"),
    CAPTION("Caption"),
    T_HEAD("THead"),
    T_BODY("TBody"),
    T_FOOT("TFoot"),
    TR("TR"),
    TH("TH"),
    TD("TD"),
    REFERENCE("Reference"),
    LINK("Link"),
    FORMULA("Formula"),
    SPAN("Span");

    private final String type;

    Role(String type) {
        this.type = type;
    }

    PdfName type() {
        return new PdfName(type);
    }

    static Role heading(int level) {
        return valueOf(String.format(Locale.ROOT, "H%d", level));
    }

    /** Whether it only has a meaning inside the one thing it belongs to. */
    boolean isMember() {
        return switch (this) {
            case TOCI, LI, L_BODY, CAPTION, T_HEAD, T_BODY, T_FOOT, TR, TH, TD -> true;
            default -> false;
        };
    }

    /** Whether all that lies in it are its own members. */
    boolean holdsMembers() {
        return switch (this) {
            case TOC, TOCI, L, LI, TABLE, T_HEAD, T_BODY, T_FOOT, TR -> true;
            default -> false;
        };
    }

    private boolean isInline() {
        return compareTo(REFERENCE) >= 0;
    }

    /** What must be put between this and something that cannot lie in it directly; nothing if it can. */
    @Nullable
    Role between(Role kid) {
        return switch (this) {
            case DOCUMENT, PART, SECT, DIV, BLOCK_QUOTE -> kid.isInline() ? P : null;
            case TOC -> kid == TOCI || kid == TOC ? null : TOCI;
            case TOCI -> kid == REFERENCE || kid == TOC ? null : REFERENCE;
            case L -> kid == LI ? null : LI;
            case LI -> kid == L_BODY ? null : L_BODY;
            case TABLE -> isRows(kid) || kid == CAPTION ? null : T_BODY;
            case T_HEAD, T_BODY, T_FOOT -> kid == TR ? null : TR;
            case TR -> kid == TH || kid == TD ? null : TD;
            default -> null;
        };
    }

    private static boolean isRows(Role kid) {
        return kid == T_HEAD || kid == T_BODY || kid == T_FOOT;
    }
}
