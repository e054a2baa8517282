@NullMarked
package perkilo.review;

import org.jspecify.annotations.NullMarked;
