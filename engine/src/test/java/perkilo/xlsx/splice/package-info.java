@NullMarked
package perkilo.xlsx.splice;

import org.jspecify.annotations.NullMarked;
