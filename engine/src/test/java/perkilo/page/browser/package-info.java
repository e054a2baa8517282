/**
 * Whole stories in a real browser: the page that people see, served as the command serves it.
 *
 * <p>{@link perkilo.page.browser.OpenPage} serves a folder and opens it; {@code …View} classes know where things are on
 * a view. Waiting is for what must be seen, with a limit only against hanging.
 */
@NullMarked
package perkilo.page.browser;

import org.jspecify.annotations.NullMarked;
