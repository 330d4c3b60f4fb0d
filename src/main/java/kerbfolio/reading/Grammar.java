package kerbfolio.reading;

import com.fasterxml.jackson.core.JsonProcessingException;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** A file that is no YAML or no JSON: the parser's finding, in words that say what to write. */
final class Grammar {
    private static final String UNCLOSED = "a quote or bracket is opened here and never closed; close it";

    /** Part of what the YAML parser says, and what helps. The first that fits is said. */
    private static final String[][] YAML = {
        {"\\t", "a tab stands here; indent with spaces"},
        {"unexpected end of stream", UNCLOSED},
        {"<stream end>", UNCLOSED},
        {
            "mapping values are not allowed",
            "one `: ` too many; put a text that holds a colon into quotes, and see that the key above has its own `:`"
        },
        {"a comment or a line break", "a text that begins with > or | goes into quotes, as in \"> 500 MΩ\""},
        {"cannot start any token", "a text that begins with this sign goes into quotes"},
        {"could not find expected ':'", "the key above has no `: ` after it"},
        {"", "the indentation or the quotes do not fit; begin this line under the key it belongs with"}
    };

    /** The same for JSON. */
    private static final String[][] JSON = {
        {"Non-standard token", "JSON has no such number; write a figure with its unit in double quotes"},
        {"end-of-input", "the file ends before its last bracket or quote is closed; close it"},
        {"start field name", "a key in double quotes belongs here; take out a comma before a closing bracket"},
        {"Leading zeroes", "put a number with leading noughts into double quotes"},
        {"Unrecognized token", "put a text into double quotes"},
        {"", "see that commas, brackets and double quotes are right around this place"}
    };

    private Grammar() {}

    static Complaint complaint(Text text, JsonProcessingException fault, boolean json) {
        String found = String.valueOf(fault.getOriginalMessage());
        long at = fault.getLocation() == null
                ? 0
                : Math.max(0, fault.getLocation().getCharOffset());
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof MarkedYAMLException yaml && yaml.getProblemMark() != null) {
                found = yaml.getProblem();
                at = mark(yaml).getIndex();
            }
        }
        int place =
                Offsets.of(text.text(), !json).chars(Math.min(at, text.text().length()));
        return text.complaint(place, "", "this does not read as " + (json ? "JSON: " : "YAML: ") + hint(found, json));
    }

    /** What is never closed is shown where it opens: its end is the end of the file. */
    private static Mark mark(MarkedYAMLException fault) {
        boolean open = hint(fault.getProblem(), false).equals(UNCLOSED);
        return open && fault.getContextMark() != null ? fault.getContextMark() : fault.getProblemMark();
    }

    private static String hint(String found, boolean json) {
        for (String[] line : json ? JSON : YAML) {
            if (found.contains(line[0])) {
                return line[1];
            }
        }
        return "";
    }
}
