/** What a dossier was made from, by hash, and whether a dossier somebody holds is still the one that was issued. */
@NullMarked
package kerbfolio.fingerprint;

import org.jspecify.annotations.NullMarked;
