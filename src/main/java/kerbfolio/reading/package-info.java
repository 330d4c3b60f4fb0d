/** Text files to records: every complaint at once, each with its line and column; and records back to JSON. */
@NullMarked
package kerbfolio.reading;

import org.jspecify.annotations.NullMarked;
