/** The list of all checks, in the order a dossier prints them; one package below it per trade. */
@NullMarked
package kerbfolio.checks;

import org.jspecify.annotations.NullMarked;
