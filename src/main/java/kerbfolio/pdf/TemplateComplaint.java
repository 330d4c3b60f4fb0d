package kerbfolio.pdf;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A report template or style sheet that cannot be printed as it stands. The message is meant for the terminal of
 * whoever edits the templates: where, what, and what to write instead.
 */
public final class TemplateComplaint extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String file;
    private final int line;
    private final int column;

    private TemplateComplaint(String file, int line, int column, String message, @Nullable Throwable cause) {
        super(message, cause);
        this.file = file;
        this.line = line;
        this.column = column;
    }

    /** A complaint about one place of one template. */
    static TemplateComplaint at(String file, int line, int column, String what, @Nullable Throwable cause) {
        return new TemplateComplaint(
                file, line, column, file + ", line " + line + ", column " + column + ": " + what, cause);
    }

    /** A complaint about a template as a whole. */
    static TemplateComplaint in(String file, String what, @Nullable Throwable cause) {
        return new TemplateComplaint(file, 0, 0, file + ": " + what, cause);
    }

    /** A complaint about the filled page, where the template's own lines are no longer known. */
    static TemplateComplaint onPage(String what) {
        return new TemplateComplaint("", 0, 0, what, null);
    }

    /** A complaint about the filled page that another fault gave rise to. */
    static TemplateComplaint onPage(String what, Throwable cause) {
        return new TemplateComplaint("", 0, 0, what, cause);
    }

    /** Several complaints about the filled page in one, a line each. */
    static TemplateComplaint onPage(List<String> complaints) {
        return onPage(String.join(System.lineSeparator(), complaints));
    }

    /** The template's name, empty when the fault was only seen in the filled page. */
    public String file() {
        return file;
    }

    /** Line in the template, from 1; 0 when not known. */
    public int line() {
        return line;
    }

    /** Column in the template, from 1; 0 when not known. */
    public int column() {
        return column;
    }
}
