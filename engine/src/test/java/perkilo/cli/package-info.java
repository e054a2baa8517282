/** The commands as a person runs them: arguments in; text, files and an exit code out. */
@NullMarked
package perkilo.cli;

import org.jspecify.annotations.NullMarked;
