package kerbfolio.reading;

/**
 * What is wrong at one place of a file, and what to write instead.
 *
 * @param file name of the file
 * @param line counted from 1
 * @param column counted from 1, in characters
 * @param path the place in words, {@code parts > drive-unit > mass}; empty for the file as a whole
 * @param text what is wrong and what to write instead
 */
public record Complaint(String file, int line, int column, String path, String text) {
    @Override
    public String toString() {
        return file + ":" + line + ":" + column + ": " + (path.isEmpty() ? "" : path + ": ") + text;
    }
}
