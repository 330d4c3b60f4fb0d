package kerbfolio.pdf;

import freemarker.cache.TemplateLoader;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The template language, locked: everything is escaped for XML, nothing depends on the machine's language or hour, no
 * class can be named, and the few words that would run or print raw what is in the data, or ask the clock, are refused
 * when a template is loaded.
 */
final class LockedTemplates extends Configuration {
    private static final Pattern REFUSED =
            Pattern.compile("\\?(interpret|eval|eval_json|evalJson|new|api|no_esc|noEsc)\\b|(?<!\\w)\\.now\\b");

    private final Set<Template> examined = ConcurrentHashMap.newKeySet();

    LockedTemplates(TemplateLoader loader) {
        super(VERSION_2_3_34);
        setTemplateLoader(loader);
        setObjectWrapper(new PlainValues());
        setDefaultEncoding(StandardCharsets.UTF_8.name());
        setOutputEncoding(StandardCharsets.UTF_8.name());
        setAutoEscapingPolicy(ENABLE_IF_SUPPORTED_AUTO_ESCAPING_POLICY);
        setRecognizeStandardFileExtensions(true);
        setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        setAPIBuiltinEnabled(false);
        setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        setLogTemplateExceptions(false);
        setAttemptExceptionReporter((fault, filling) -> {});
        setWrapUncheckedExceptions(true);
        setFallbackOnNullLoopVariable(false);
        setLocalizedLookup(false);
        setLocale(Locale.ROOT);
        setTimeZone(TimeZone.getTimeZone("UTC"));
        setNumberFormat("computer");
        setBooleanFormat("c");
    }

    @Override
    public @Nullable Template getTemplate(
            String name,
            @Nullable Locale locale,
            @Nullable Object condition,
            @Nullable String encoding,
            boolean parse,
            boolean ignoreMissing)
            throws IOException {
        Template template = super.getTemplate(name, locale, condition, encoding, parse, ignoreMissing);
        if (template != null && examined.add(template)) {
            refuseRawWords(template);
        }
        return template;
    }

    /** Looks at the parsed form, where no space or comment can hide a word. */
    private static void refuseRawWords(Template template) throws IOException {
        StringWriter parsed = new StringWriter();
        template.dump(parsed);
        Matcher word = REFUSED.matcher(parsed.toString());
        if (word.find()) {
            throw TemplateComplaint.in(
                    template.getSourceName(), "`" + word.group() + "` is not allowed in a report template", null);
        }
    }
}
