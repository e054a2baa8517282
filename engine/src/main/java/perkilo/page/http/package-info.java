/**
 * What every request to the page has in common: who may ask, how much, in what form, and how an answer is sent.
 *
 * <p>Start at {@link perkilo.page.http.Guard}. Nothing here knows of workbooks.
 */
@NullMarked
package perkilo.page.http;

import org.jspecify.annotations.NullMarked;
