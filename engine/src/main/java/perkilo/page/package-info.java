/**
 * The page: a server for this computer alone, whose page shows in a browser what the commands show in a terminal.
 *
 * <p>It works in one folder. Each request becomes a request to a service of {@code perkilo.desk}, and its answer JSON,
 * of the same form as the commands' where they have one. Start at {@link perkilo.page.PageServer}.
 *
 * <ul>
 *   <li>{@code .http}: who may ask, and how;
 *   <li>{@code .folder}: the files in the folder;
 *   <li>{@code .work}: how far long work is;
 *   <li>{@code .view}: what the page shows, as JSON.
 * </ul>
 */
@NullMarked
package perkilo.page;

import org.jspecify.annotations.NullMarked;
