/** What is printed, in order, as plain words and figures; how it looks is decided elsewhere. */
@NullMarked
package kerbfolio.dossier;

import org.jspecify.annotations.NullMarked;
