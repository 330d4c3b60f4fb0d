/** Drawings, each made once on a canvas and used both in the PDF as vectors and in the workbook as a picture. */
@NullMarked
package kerbfolio.figure;

import org.jspecify.annotations.NullMarked;
