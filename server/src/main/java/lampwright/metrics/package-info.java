/**
 * How the running server is measured: meters, and all of them in the text format that Prometheus
 * reads. Imports nothing of the house; whoever has something to tell hands it a number to ask for.
 * The meters' library is known here, and to the store for the pool of connections. Start reading at
 * {@link lampwright.metrics.Metrics}.
 */
@NullMarked
package lampwright.metrics;

import org.jspecify.annotations.NullMarked;
