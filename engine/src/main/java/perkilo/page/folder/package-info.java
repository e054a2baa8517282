/**
 * The one folder that the page works in, and the files in it.
 *
 * <p>Start at {@link perkilo.page.folder.OpenFolder}. The page names files only; no name leads out of the folder.
 */
@NullMarked
package perkilo.page.folder;

import org.jspecify.annotations.NullMarked;
