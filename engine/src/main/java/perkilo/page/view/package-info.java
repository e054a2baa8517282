/** What the page shows, as JSON, beside the answers that the commands give. */
@NullMarked
package perkilo.page.view;

import org.jspecify.annotations.NullMarked;
