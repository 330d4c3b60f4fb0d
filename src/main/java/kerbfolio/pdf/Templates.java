package kerbfolio.pdf;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.FileTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.Environment;
import freemarker.core.ParseException;
import freemarker.template.TemplateException;
import freemarker.template.TemplateNotFoundException;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/**
 * The report templates: the program's own, and before them those of a folder the shop names. Whatever the data holds
 * comes out as text; no word of it is ever run, and a template reaches no file outside its folder.
 */
public final class Templates {
    private static final String FOLDER = "report-templates";

    private final LockedTemplates configuration;

    private Templates(TemplateLoader... loaders) {
        configuration = new LockedTemplates(new MultiTemplateLoader(loaders));
    }

    /** The templates that travel inside the program. */
    public static Templates bundled() {
        return new Templates(inside());
    }

    /**
     * The templates of a folder, and the program's own for whatever is not in it.
     *
     * @throws TemplateComplaint if there is no such folder
     */
    public static Templates from(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw TemplateComplaint.in(
                    folder.toString(),
                    Files.exists(folder) ? "is no folder of templates" : "there is no such folder of templates",
                    null);
        }
        try {
            return new Templates(new FileTemplateLoader(folder.toFile()), inside());
        } catch (IOException e) {
            throw TemplateComplaint.in(folder.toString(), "the folder of templates cannot be read", e);
        }
    }

    private static TemplateLoader inside() {
        return new ClassTemplateLoader(Templates.class.getClassLoader(), FOLDER);
    }

    /**
     * Fills one template.
     *
     * @param name file name below the folder of templates
     * @param model what the template may speak of: records of this program, lists, maps, text, numbers, truth values
     * @throws TemplateComplaint if the template is missing, faulty, or speaks of something that is not there
     */
    public String fill(String name, Map<String, Object> model) {
        StringWriter page = new Sheet();
        try {
            Environment filling = configuration.getTemplate(name).createProcessingEnvironment(model, page);
            filling.process();
        } catch (TemplateNotFoundException e) {
            throw TemplateComplaint.in(name, "there is no template of this name", e);
        } catch (ParseException e) {
            throw FillFault.of(e);
        } catch (TemplateException e) {
            throw FillFault.of(name, e);
        } catch (IOException e) {
            throw TemplateComplaint.in(name, "the template cannot be filled: " + e.getMessage(), e);
        } catch (SecurityException e) {
            throw TemplateComplaint.in(name, "the template lies outside its folder", e);
        } catch (StackOverflowError e) {
            throw TemplateComplaint.in(name, "a template or macro calls itself without end", e);
        }
        return Characters.legal(page.toString());
    }

    /** A page with an end: a template that repeats itself for ever is stopped. */
    private static final class Sheet extends StringWriter {
        private static final int MOST = 20_000_000;

        @Override
        public void write(char[] text, int from, int length) {
            ask(length);
            super.write(text, from, length);
        }

        @Override
        public void write(String text) {
            ask(text.length());
            super.write(text);
        }

        @Override
        public void write(String text, int from, int length) {
            ask(length);
            super.write(text, from, length);
        }

        private void ask(int more) {
            if (getBuffer().length() + more > MOST) {
                throw TemplateComplaint.onPage("a template prints more than " + MOST / 1_000_000 + " million letters");
            }
        }
    }
}
