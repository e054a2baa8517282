/** Work that takes long: how far it is, told to the page, and asked to stop by it. */
@NullMarked
package perkilo.page.work;

import org.jspecify.annotations.NullMarked;
