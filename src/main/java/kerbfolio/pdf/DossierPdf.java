package kerbfolio.pdf;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kerbfolio.dossier.Dossier;
import kerbfolio.figure.Figure;
import kerbfolio.figure.Figures;
import kerbfolio.photo.Print;
import org.jspecify.annotations.Nullable;

/** The dossier as a PDF, with the files it was made from inside. */
public final class DossierPdf {
    private DossierPdf() {}

    /**
     * Fills the templates and lays them out.
     *
     * @param inside the files that travel inside the PDF
     * @param prints the photographs of the job, by the name of their file
     * @param templates a folder of the shop's own templates, if it has one
     * @throws TemplateComplaint if a template is missing or wrong
     */
    public static Pdf write(
            Dossier dossier, List<Attachment> inside, Map<String, Print> prints, @Nullable Path templates) {
        Templates filled = templates == null ? Templates.bundled() : Templates.from(templates);
        Map<String, Figure> figures = figures(dossier);
        String page = filled.fill(
                "dossier.ftlx",
                Map.of(
                        "head", dossier.head(),
                        "handover", dossier.handover(),
                        "inspection", dossier.inspection(),
                        "workshop", dossier.workshop(),
                        "workings", dossier.workings(),
                        "unexamined", dossier.unexamined(),
                        "cautions", dossier.cautions(),
                        "figures", figures));
        return new Renderer(Fonts.load(), dossier.head().program())
                .render(page, facts(dossier, inside, page), new Pictures(figures, prints));
    }

    private static Map<String, Figure> figures(Dossier dossier) {
        return Figures.of(dossier).stream().collect(Collectors.toMap(Figure::id, figure -> figure));
    }

    private static DocumentFacts facts(Dossier dossier, List<Attachment> inside, String page) {
        var head = dossier.head();
        return new DocumentFacts(
                "Handover dossier " + head.number() + "-" + head.revision(),
                head.shop(),
                head.car(),
                "en",
                LocalDate.parse(head.date()).atStartOfDay(ZoneOffset.UTC).toInstant(),
                head.program() + head.fingerprint() + page,
                inside);
    }
}
