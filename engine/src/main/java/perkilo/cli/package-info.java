/**
 * The command line: arguments in, one call, text and an exit code out.
 *
 * <ul>
 *   <li>answers go to standard output, messages to standard error; with {@code --json} only the answer is on standard
 *       output;
 *   <li>exit codes: {@link perkilo.cli.Exit};
 *   <li>no arithmetic and no file format here: each command asks one service of {@link perkilo.desk};
 *   <li>a wrong command line is answered in one line that says how to type it; the words are in
 *       {@link perkilo.cli.CommandMessages}.
 * </ul>
 *
 * <p>Start at {@link perkilo.cli.Perkilo}. This package may use everything.
 */
@NullMarked
package perkilo.cli;

import org.jspecify.annotations.NullMarked;
