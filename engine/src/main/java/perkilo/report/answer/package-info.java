/** The sheets of an answer as a whole: what a unit may cost, why a cost changed. */
@NullMarked
package perkilo.report.answer;

import org.jspecify.annotations.NullMarked;
