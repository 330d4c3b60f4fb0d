/** The program's door: arguments in, exit code out. */
@NullMarked
package kerbfolio;

import org.jspecify.annotations.NullMarked;
