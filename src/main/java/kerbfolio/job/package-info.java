/** The job file as records: the key, the component, the column heading and the printed word are the same. */
@NullMarked
package kerbfolio.job;

import org.jspecify.annotations.NullMarked;
