package kerbfolio.pdf;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfEncryption;
import com.lowagie.text.pdf.PdfFileSpecification;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfStream;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.GregorianCalendar;
import org.xhtmlrenderer.pdf.DefaultPDFCreationListener;
import org.xhtmlrenderer.pdf.ITextRenderer;

/**
 * Makes the PDF an archival one (ISO 19005-3, level A), accessible (ISO 14289-1), and the same every time: its facts,
 * dates and identifier come from the job, the colour space and the attached files lie inside.
 */
final class Archive extends DefaultPDFCreationListener {
    private static final PdfName RELATIONSHIP = new PdfName("AFRelationship");
    private static final PdfName ASSOCIATED = new PdfName("AF");
    private static final int IDENTIFIER_BYTES = 16;
    private static final int COLOUR_CHANNELS = 3;

    private final DocumentFacts facts;
    private final String program;

    Archive(DocumentFacts facts, String program) {
        this.facts = facts;
        this.program = program;
    }

    @Override
    public void preOpen(ITextRenderer renderer) {
        PdfWriter writer = writer(renderer);
        writer.setViewerPreferences(PdfWriter.DisplayDocTitle | PdfWriter.PageModeUseOutlines);
        writer.setTagged();
        writer.setTabs(PdfName.S);
        writer.setFullCompression();
    }

    @Override
    public void onClose(ITextRenderer renderer) {
        PdfWriter writer = writer(renderer);
        try {
            describe(writer);
            PdfDictionary catalog = writer.getExtraCatalog();
            catalog.put(PdfName.LANG, text(facts.language()));
            catalog.put(PdfName.OUTPUTINTENTS, new PdfArray(colourIntent(writer)));
            attach(writer);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PdfWriter writer(ITextRenderer renderer) {
        PdfWriter writer = renderer.getWriter();
        if (writer == null) {
            throw new IllegalStateException("the PDF has not been begun");
        }
        return writer;
    }

    private void describe(PdfWriter writer) {
        PdfDictionary info = writer.getInfo();
        PdfDate date = new PdfDate(GregorianCalendar.from(facts.created().atZone(ZoneOffset.UTC)));
        info.put(PdfName.TITLE, text(facts.title()));
        info.put(PdfName.AUTHOR, text(facts.author()));
        info.put(PdfName.SUBJECT, text(facts.subject()));
        info.remove(PdfName.KEYWORDS);
        info.put(PdfName.CREATOR, text(program));
        info.put(PdfName.PRODUCER, text(program));
        info.put(PdfName.CREATIONDATE, date);
        info.put(PdfName.MODDATE, date);
        byte[] identifier = identifier();
        info.put(PdfName.FILEID, PdfEncryption.createInfoId(identifier, identifier));
        writer.setXmpMetadata(XmpPacket.of(facts, program));
    }

    private byte[] identifier() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest((facts.seed() + "\n" + facts.title()).getBytes(StandardCharsets.UTF_8));
            return Arrays.copyOf(digest, IDENTIFIER_BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static PdfDictionary colourIntent(PdfWriter writer) throws IOException {
        PdfDictionary intent = new PdfDictionary(PdfName.OUTPUTINTENT);
        intent.put(PdfName.S, PdfName.GTS_PDFA1);
        intent.put(PdfName.OUTPUTCONDITIONIDENTIFIER, text("sRGB"));
        intent.put(PdfName.INFO, text("sRGB, IEC 61966-2-1"));
        PdfStream profile = new PdfStream(ColourProfile.sRgb());
        profile.put(PdfName.N, new PdfNumber(COLOUR_CHANNELS));
        profile.flateCompress(PdfStream.BEST_COMPRESSION);
        intent.put(PdfName.DESTOUTPUTPROFILE, writer.addToBody(profile).getIndirectReference());
        return intent;
    }

    private void attach(PdfWriter writer) throws IOException {
        PdfArray associated = new PdfArray();
        PdfDictionary stamp = new PdfDictionary();
        stamp.put(
                PdfName.MODDATE,
                new PdfDate(GregorianCalendar.from(facts.created().atZone(ZoneOffset.UTC))));
        for (Attachment file : facts.attachments()) {
            PdfFileSpecification inside = PdfFileSpecification.fileEmbedded(
                    writer,
                    null,
                    file.name(),
                    file.content().get(),
                    file.mediaType(),
                    stamp,
                    PdfStream.BEST_COMPRESSION);
            inside.put(RELATIONSHIP, new PdfName(file.relation().toString()));
            writer.addFileAttachment(file.description(), inside);
            associated.add(inside.getReference());
        }
        if (!associated.isEmpty()) {
            writer.getExtraCatalog().put(ASSOCIATED, associated);
        }
    }

    private static PdfString text(String text) {
        return new PdfString(text, PdfObject.TEXT_UNICODE);
    }
}
