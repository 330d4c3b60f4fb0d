package kerbfolio.pdf;

import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.template.TemplateException;
import freemarker.template.TemplateNotFoundException;
import java.util.regex.Pattern;

/** Puts the template language's long reports into one line for whoever edits the template. */
final class FillFault {
    private static final Pattern EXPLANATION = Pattern.compile("\\R(----|==>).*", Pattern.DOTALL);
    private static final Pattern EXPECTATIONS = Pattern.compile(", but was expecting .*", Pattern.DOTALL);
    private static final Pattern BLAME = Pattern.compile("\\s*The blamed expression:?$");
    private static final Pattern JAVA_NAMES = Pattern.compile("\\s*\\(([^()]* wrapped into|wrapper:) [^()]*\\)");
    private static final Pattern COLON = Pattern.compile("\\s*:$");

    private FillFault() {}

    /** A template that cannot be read as one. */
    static TemplateComplaint of(ParseException e) {
        return TemplateComplaint.at(
                e.getTemplateName(), e.getLineNumber(), e.getColumnNumber(), oneLine(e.getEditorMessage()), e);
    }

    /** A template that cannot be filled; {@code name} is the one that was asked for. */
    static TemplateComplaint of(String name, TemplateException e) {
        Throwable cause = e.getCause();
        if (cause instanceof TemplateComplaint inner) {
            return inner;
        }
        if (cause instanceof ParseException inner) {
            return of(inner);
        }
        return e.getLineNumber() == null
                ? TemplateComplaint.in(name, words(e), e)
                : TemplateComplaint.at(e.getTemplateSourceName(), e.getLineNumber(), e.getColumnNumber(), words(e), e);
    }

    private static String words(TemplateException e) {
        if (e.getCause() instanceof TemplateNotFoundException missing) {
            return "there is no template called `" + missing.getTemplateName() + "`";
        }
        if (e instanceof InvalidReferenceException) {
            return "there is nothing called `" + e.getBlamedExpressionString() + "` here";
        }
        return oneLine(e.getMessageWithoutStackTop());
    }

    private static String oneLine(String report) {
        String line = EXPLANATION.matcher(report).replaceFirst("");
        line = EXPECTATIONS.matcher(line).replaceFirst("");
        line = BLAME.matcher(line.replaceAll("\\s+", " ").strip()).replaceFirst("");
        line = JAVA_NAMES.matcher(line).replaceAll("");
        return COLON.matcher(line).replaceFirst("");
    }
}
