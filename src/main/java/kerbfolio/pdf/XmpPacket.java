package kerbfolio.pdf;

import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/**
 * The same facts as in the document's information dictionary, written as XMP (ISO 16684-1), and the claim to be
 * PDF/A-3, level A (ISO 19005-3), and PDF/UA-1 (ISO 14289-1). The latter's one word is unknown to the former, which
 * wants it described.
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
                    xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
                    xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
                    xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
                    xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
                    xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
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
                  <pdfaid:conformance>A</pdfaid:conformance>
                  <pdfuaid:part>1</pdfuaid:part>
                  <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
                    <pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
                    <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
                    <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
                    <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
                      <pdfaProperty:name>part</pdfaProperty:name>
                      <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
                      <pdfaProperty:category>internal</pdfaProperty:category>
                      <pdfaProperty:description>part of ISO 14289 kept to</pdfaProperty:description>
                    </rdf:li></rdf:Seq></pdfaSchema:property>
                  </rdf:li></rdf:Bag></pdfaExtension:schemas>
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
