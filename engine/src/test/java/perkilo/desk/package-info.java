/** The services, called as a front end calls them: no process, no console, values in and out. */
@NullMarked
package perkilo.desk;

import org.jspecify.annotations.NullMarked;
