package kerbfolio.pdf;

import static java.util.Objects.requireNonNull;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfContentByte;
import java.awt.Shape;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.css.style.CalculatedStyle;
import org.xhtmlrenderer.pdf.ITextFSFont;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.FSFont;
import org.xhtmlrenderer.render.InlineLayoutBox;
import org.xhtmlrenderer.render.InlineText;
import org.xhtmlrenderer.render.JustificationInfo;
import org.xhtmlrenderer.render.PageBox;
import org.xhtmlrenderer.render.RenderingContext;

/**
 * Puts the page on paper and says of each stroke what it belongs to: text and figures to their tags, at their first
 * appearance; margins, repeated heads, rules and grounds to nothing. It also looks at each string a last time: what a
 * style sheet itself adds (content before and after, page margins) has not passed the marking of the page, and a sign
 * lost there is noticed here.
 */
final class PageInk extends ITextOutputDevice {
    /** What a style sheet fills a line of contents with; nobody wants it read out. */
    private static final Pattern LEADER = Pattern.compile("[\\s.·]*");

    /** As much may stand in the margin without anybody seeing it [pt]. */
    private static final float SLACK = 2;

    private static final int EXCERPT = 40;

    private final float dotsPerPoint;
    private final Tags tags;
    private final Links links;
    private final Marks marks = new Marks();
    private final Set<Object> painted = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<String> lost = new LinkedHashSet<>();
    private @Nullable BaseFont face;
    private @Nullable RenderingContext context;
    private boolean inText;
    private int last;

    PageInk(float dotsPerPoint, Tags tags) {
        super(dotsPerPoint);
        this.dotsPerPoint = dotsPerPoint;
        this.tags = tags;
        links = new Links(this, tags);
    }

    @Override
    public void initializePage(PdfContentByte page, float height) {
        super.initializePage(page, height);
        marks.begin(page, height);
    }

    @Override
    public void finishPage() {
        marks.close();
        if (context != null) {
            links.finishPage(context);
        }
        super.finishPage();
    }

    @Override
    public void finish(RenderingContext context, Box root) {
        super.finish(context, root);
        tags.finish(getCurrentPage().getPdfWriter());
    }

    @Override
    public void drawText(RenderingContext context, InlineText text) {
        if (text.isEmpty()) {
            return;
        }
        this.context = context;
        InlineLayoutBox box = requireNonNull(text.getParent());
        Rectangle area = createLocalTargetArea(context, box);
        if (area.getRight() > edge(context) + SLACK && !box.isContainedInMarginBox()) {
            String words = text.getSubstring().strip();
            lost.add("text runs off page " + (context.getPageNo() + 1) + ": \""
                    + words.substring(0, Math.min(words.length(), EXCERPT)) + "\"");
        }
        Tags.Spot spot = painted.add(text) ? spot(text, box) : null;
        if (box.isContainedInMarginBox()) {
            marks.margin(area);
        } else if (spot == null) {
            marks.artifact();
        } else {
            marks.tag(spot.tag(), spot.begin());
            last = spot.begin();
            Tag link = spot.tag().link();
            if (link != null) {
                links.cover(link, box.getLineBox(), area);
            }
        }
        inText = true;
        super.drawText(context, text);
        inText = false;
    }

    /** Where the right margin of the page begins [pt]. */
    private float edge(RenderingContext context) {
        PageBox page = requireNonNull(context.getPage());
        return (page.getWidth(context) - page.getMarginBorderPadding(context, CalculatedStyle.Edge.RIGHT))
                / dotsPerPoint;
    }

    private Tags.@Nullable Spot spot(InlineText text, InlineLayoutBox box) {
        if (text.getTextNode() != null) {
            return tags.of(text.getTextNode());
        }
        boolean isLeader = LEADER.matcher(text.getSubstring()).matches();
        return isLeader ? null : tags.added(box.getElement(), last);
    }

    @Override
    public void paintReplacedElement(RenderingContext context, BlockBox box) {
        Tags.Spot spot = box.isContainedInMarginBox() ? null : tags.of(box.getElement());
        if (spot != null && box.getReplacedElement() instanceof PictureBox picture && painted.add(box)) {
            picture.describe(spot.tag(), createLocalTargetArea(context, box));
            marks.tag(spot.tag(), spot.begin());
        } else {
            marks.artifact();
        }
        super.paintReplacedElement(context, box);
    }

    @Override
    public void draw(Shape shape) {
        marks.artifact();
        super.draw(shape);
    }

    @Override
    public void fill(Shape shape) {
        marks.artifact();
        super.fill(shape);
    }

    @Override
    public void setFont(FSFont font) {
        super.setFont(font);
        face = ((ITextFSFont) font).getFontDescription().getFont();
    }

    @Override
    public void drawString(String text, float x, float y, @Nullable JustificationInfo spread) {
        if (!inText) { // the number before a list's item, which its place in the list says as well
            marks.artifact();
        }
        BaseFont used = face;
        if (used != null) {
            text.codePoints()
                    .filter(c -> !used.charExists(c))
                    .forEach(c -> lost.add("the style sheet prints \"" + text + "\" in a face without "
                            + "U+%04X; it needs font-family: \"%s\"".formatted(c, Fonts.SYMBOLS)));
        }
        // The engine spreads a justified line char by char and would tear a surrogate pair.
        super.drawString(text, x, y, text.codePoints().anyMatch(Character::isSupplementaryCodePoint) ? null : spread);
    }

    List<String> complaints() {
        return List.copyOf(lost);
    }
}
