/** The page's server, asked as a browser asks it. */
@NullMarked
package perkilo.page;

import org.jspecify.annotations.NullMarked;
