/** Whether the inputs are still those of which result sheets were computed. */
@NullMarked
package perkilo.report.inputs;

import org.jspecify.annotations.NullMarked;
