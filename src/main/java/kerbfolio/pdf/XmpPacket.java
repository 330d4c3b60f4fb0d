package kerbfolio.pdf;

import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/**
 * The same facts as in the document's information dictionary, written as XMP (ISO 16684-1), and the claim to be
 * PDF/A-3, level B (ISO 19005-3).
 */
final class XmpPacket {
    private static final String TEMPLATE = """
            <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/">
              <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about=""
                    xmlns:dc="http://purl.org/dc/elements/1.1/"
                    xmlns:xmp="http://ns.adobe.com/xap/1.0/"
                    xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
                    xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
                  <dc:format>application/pdf</dc:format>
                  <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
                  <dc:creator><rdf:Seq><rdf:li>%s</rdf:li></rdf:Seq></dc:creator>
                  <dc:description><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:description>
                  <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
                  <xmp:CreateDate>%s</xmp:CreateDate>
                  <xmp:ModifyDate>%5$s</xmp:ModifyDate>
                  <xmp:MetadataDate>%5$s</xmp:MetadataDate>
                  <xmp:CreatorTool>%s</xmp:CreatorTool>
                  <pdf:Producer>%6$s</pdf:Producer>
                  <pdfaid:part>3</pdfaid:part>
                  <pdfaid:conformance>B</pdfaid:conformance>
                </rdf:Description>
              </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="r"?>
            """;

    private XmpPacket() {}

    static byte[] of(DocumentFacts facts, String program) {
        return TEMPLATE.formatted(
                        Characters.escaped(facts.title()),
                        Characters.escaped(facts.author()),
                        Characters.escaped(facts.subject()),
                        Characters.escaped(facts.language()),
                        DateTimeFormatter.ISO_INSTANT.format(facts.created().truncatedTo(ChronoUnit.SECONDS)),
                        Characters.escaped(program))
                .getBytes(StandardCharsets.UTF_8);
    }
}
