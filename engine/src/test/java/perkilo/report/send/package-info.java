@NullMarked
package perkilo.report.send;

import org.jspecify.annotations.NullMarked;
