/** Photographs of the job, made fit for paper. */
@NullMarked
package kerbfolio.photo;

import org.jspecify.annotations.NullMarked;
