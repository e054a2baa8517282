/** The commands as a person runs them: what is printed, with which exit code, and which files are there afterwards. */
@NullMarked
package perkilo.cli;

import org.jspecify.annotations.NullMarked;
