/**
 * The command line: arguments in, one call, text and an exit code out.
 *
 * <ul>
 *   <li>what a person reads goes to standard output, messages go to standard error; with {@code --json} the answer
 *       alone is on standard output;
 *   <li>exit codes: {@link perkilo.cli.Exit};
 *   <li>no arithmetic and no file format here: each command asks one service of {@link perkilo.desk};
 *   <li>what is typed wrong is answered in one line that says how to type it.
 * </ul>
 *
 * <p>Start at {@link perkilo.cli.Perkilo}. This package may use everything.
 */
@NullMarked
package perkilo.cli;

import org.jspecify.annotations.NullMarked;
