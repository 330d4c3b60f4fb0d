/** Fills the report templates and sets them as archival PDF, and hands an attachment of such a PDF back out. */
@NullMarked
package kerbfolio.pdf;

import org.jspecify.annotations.NullMarked;
