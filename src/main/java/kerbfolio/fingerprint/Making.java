package kerbfolio.fingerprint;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What goes into a dossier besides the job file and what lies beside it.
 *
 * @param program this program with its version
 * @param templates a folder of the shop's own templates, if they are used
 * @param known hash of each file the job names that is not at hand, by its name
 */
public record Making(String program, @Nullable Path templates, Map<String, String> known) {
    /** With every file the job names at hand. */
    public Making(String program, @Nullable Path templates) {
        this(program, templates, Map.of());
    }

    @Nullable
    String templatesHash() throws IOException {
        return templates == null ? null : Sha256.ofTemplates(templates);
    }
}
