/** The dossier as a workbook: the same figures as live cell formulas, with sheets a shop can fill in and send back. */
@NullMarked
package kerbfolio.workbook;

import org.jspecify.annotations.NullMarked;
