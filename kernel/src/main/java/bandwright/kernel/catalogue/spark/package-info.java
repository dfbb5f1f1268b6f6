// Bandwright. SPDX-License-Identifier: Apache-2.0
/** A catalogue on many machines, by Apache Spark. The only room that knows Spark, whose classes are there only where it started the program. */
@NullMarked
package bandwright.kernel.catalogue.spark;

import org.jspecify.annotations.NullMarked;
