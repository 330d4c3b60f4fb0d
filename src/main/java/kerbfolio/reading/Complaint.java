package kerbfolio.reading;

/**
 * What is wrong at one place of a file, and what to write instead.
 *
 * @param file name of the file; empty until the complaint is located
 * @param line counted from 1; 0 until the complaint is located
 * @param column counted from 1, in characters; 0 until the complaint is located
 * @param path the place in words, {@code parts > drive-unit > mass}; empty for the file as a whole; the dotted path
 *     {@code parts[drive-unit].mass} until the complaint is located
 * @param text what is wrong and what to write instead
 */
public record Complaint(String file, int line, int column, String path, String text) {
    @Override
    public String toString() {
        return (line == 0 ? "" : file + ":" + line + ":" + column + ": ") + (path.isEmpty() ? "" : path + ": ") + text;
    }
}
