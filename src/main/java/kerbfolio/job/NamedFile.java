package kerbfolio.job;

/**
 * A file the job names, which lies beside the job file.
 *
 * @param path the place that names it, such as {@code photos[0].file}
 * @param name as written, from the folder of the job file
 */
public record NamedFile(String path, String name) {}
