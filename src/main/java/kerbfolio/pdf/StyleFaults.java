package kerbfolio.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.logging.Level;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.util.XRLog;
import org.xhtmlrenderer.util.XRLogger;

/** Catches what the layout engine only writes to its log: above all the style sheet's faults. */
final class StyleFaults implements XRLogger {
    private static final Pattern SHEET_NUMBER = Pattern.compile("^\\(inline:\\d+\\) ");
    private static final StyleFaults LISTENER = new StyleFaults();

    private final ThreadLocal<List<String>> heard = ThreadLocal.withInitial(ArrayList::new);

    private StyleFaults() {}

    /** Begins to listen, for this thread. */
    static void listen() {
        XRLog.setLoggingEnabled(true);
        XRLog.setLoggerImpl(LISTENER);
        LISTENER.heard.remove();
    }

    /** Stops the print if anything was heard on this thread since it began to listen. */
    static void complain() {
        List<String> heard = LISTENER.heard.get().stream().distinct().toList();
        if (!heard.isEmpty()) {
            throw TemplateComplaint.onPage(heard);
        }
    }

    @Override
    public void log(String where, Level level, String message) {
        log(where, level, message, null);
    }

    @Override
    public void log(String where, Level level, String message, @Nullable Throwable cause) {
        // What the engine remarks on its own page breaks is no fault of a style sheet.
        boolean isOfLayout = XRLog.LAYOUT.equals(where);
        if (level.intValue() >= Level.WARNING.intValue() && !isOfLayout) {
            heard.get().add("style sheet: " + SHEET_NUMBER.matcher(message).replaceFirst(""));
        }
    }

    @Override
    public void setLevel(String where, Level level) {
        // what is too quiet is left out above; there is nothing to set
    }
}
