package kerbfolio.pdf;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kerbfolio.dossier.Dossier;
import kerbfolio.figure.Figure;
import kerbfolio.figure.Figures;
import kerbfolio.job.JobFile;
import org.jspecify.annotations.Nullable;

/** The dossier as a PDF, with the job file inside. */
public final class DossierPdf {
    private DossierPdf() {}

    /**
     * Fills the templates and lays them out.
     *
     * @param file the job file, which travels inside the PDF
     * @param templates a folder of the shop's own templates, if it has one
     * @throws TemplateComplaint if a template is missing or wrong
     */
    public static Pdf write(Dossier dossier, JobFile file, @Nullable Path templates) {
        Templates filled = templates == null ? Templates.bundled() : Templates.from(templates);
        String page = filled.fill(
                "dossier.ftlx",
                Map.of(
                        "head", dossier.head(),
                        "handover", dossier.handover(),
                        "inspection", dossier.inspection(),
                        "workings", dossier.workings(),
                        "unexamined", dossier.unexamined(),
                        "cautions", dossier.cautions()));
        return new Renderer(Fonts.load(), dossier.head().program())
                .render(page, facts(dossier, file, page), figures(dossier));
    }

    private static Map<String, Figure> figures(Dossier dossier) {
        return Figures.of(dossier).stream().collect(Collectors.toMap(Figure::id, figure -> figure));
    }

    private static DocumentFacts facts(Dossier dossier, JobFile file, String page) {
        var head = dossier.head();
        Path name = file.file().getFileName();
        var job = new Attachment(
                name == null ? "job" : name.toString(),
                "application/yaml",
                Attachment.Relation.SOURCE,
                "the job file this dossier was made from",
                file.bytes());
        return new DocumentFacts(
                "Handover dossier " + head.number() + "-" + head.revision(),
                head.shop(),
                head.car(),
                "en",
                file.job().job().date().atStartOfDay(ZoneOffset.UTC).toInstant(),
                head.program() + page,
                List.of(job));
    }
}
