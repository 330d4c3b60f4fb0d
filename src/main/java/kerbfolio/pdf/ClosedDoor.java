package kerbfolio.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextUserAgent;
import org.xhtmlrenderer.resource.ImageResource;

/**
 * Fetches nothing. The one exception is the layout engine's own style sheet, which it asks for on this same way. What
 * else was asked for is noted, because the engine swallows a refusal while it paints.
 */
final class ClosedDoor extends ITextUserAgent {
    private static final String OWN_SHEET = "/resources/css/XhtmlNamespaceHandler.css";

    private final Set<String> refused = new LinkedHashSet<>();

    ClosedDoor(ITextOutputDevice device, int dotsPerPixel) {
        super(device, dotsPerPixel);
    }

    @Override
    public @Nullable String resolveURI(@Nullable String address) {
        return address;
    }

    @Override
    public ImageResource getImageResource(String address) {
        refused.add(address);
        return new ImageResource(address, null);
    }

    @Override
    protected InputStream resolveAndOpenStream(@Nullable String address) {
        if (isOwnSheet(address)) {
            return ownSheet();
        }
        refused.add(String.valueOf(address));
        return InputStream.nullInputStream();
    }

    @Override
    protected InputStream openStream(String address) throws IOException {
        throw new IOException("nothing is fetched from " + address);
    }

    private static boolean isOwnSheet(@Nullable String address) {
        var sheet = ITextUserAgent.class.getResource(OWN_SHEET);
        return sheet != null && sheet.toString().equals(address);
    }

    private static InputStream ownSheet() {
        InputStream sheet = ITextUserAgent.class.getResourceAsStream(OWN_SHEET);
        if (sheet == null) {
            throw new IllegalStateException("the layout engine's own style sheet is missing from the program");
        }
        return sheet;
    }

    /** Stops the print if anything outside the page was asked for. */
    void complain() {
        List<String> complaints = refused.stream()
                .map(address -> "a page fetches nothing, but the style sheet or template asks for " + address)
                .toList();
        if (!complaints.isEmpty()) {
            throw TemplateComplaint.onPage(complaints);
        }
    }
}
