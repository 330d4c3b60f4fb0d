package kerbfolio.reading;

import com.fasterxml.jackson.core.JsonProcessingException;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** A file that is no YAML or no JSON: the parser's finding, in words that say what to write. */
final class Grammar {
    private Grammar() {}

    static Complaints refusal(Text text, JsonProcessingException fault, boolean json) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof MarkedYAMLException yaml && yaml.getProblemMark() != null) {
                int at = yaml.getProblemMark().getIndex();
                return text.refusal(Offsets.of(text.text(), true).chars(at), yaml(yaml.getProblem()));
            }
        }
        long at = fault.getLocation() == null
                ? 0
                : Math.max(0, fault.getLocation().getCharOffset());
        String found = fault.getOriginalMessage().lines().findFirst().orElse("");
        return text.refusal((int) Math.min(at, text.text().length()), json ? json(found) : yaml(found));
    }

    private static String yaml(String problem) {
        String hint = "check the indentation and the quotes above this place";
        if (problem.contains("\\t")) {
            hint = "a tab stands here; indent with spaces";
        } else if (problem.contains("mapping values are not allowed")) {
            hint = "a second `: ` in one line; put a text that holds a colon into quotes, or check the indentation";
        } else if (problem.contains("found character") && problem.contains("cannot start")) {
            hint = "put a text that begins with a sign into quotes";
        } else if (problem.contains("could not find expected ':'")) {
            hint = "the line above has no `: ` after its key";
        } else if (problem.contains("unexpected end of stream") || problem.contains("<stream end>")) {
            hint = "a quote or bracket is never closed";
        }
        return "this does not read as YAML: " + hint;
    }

    private static String json(String problem) {
        return "this does not read as JSON: " + problem;
    }
}
