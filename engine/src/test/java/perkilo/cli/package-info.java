@NullMarked
package perkilo.cli;

import org.jspecify.annotations.NullMarked;
