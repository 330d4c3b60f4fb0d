/** The commands: one class each, with what they print on the terminal. */
@NullMarked
package kerbfolio.cli;

import org.jspecify.annotations.NullMarked;
