package lampwright.metrics;

import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Tags;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.logging.LogbackMetrics;
import io.micrometer.core.instrument.binder.system.FileDescriptorMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.util.Collection;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.DoubleSupplier;

/**
 * All that is measured of this server, for one process. Names follow the rules of Prometheus: base
 * units, {@code _total} for what only grows.
 */
public final class Metrics implements AutoCloseable {

  /** The text format 0.0.4 of Prometheus. */
  public static final String MEDIA_TYPE = "text/plain; version=0.0.4; charset=utf-8";

  private final PrometheusMeterRegistry registry =
      new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
  private final JvmGcMetrics collections = new JvmGcMetrics();
  private final LogbackMetrics logLines = new LogbackMetrics();
  private final RequestTimes requestTimes = new RequestTimes(registry);
  private final Collection<DoubleSupplier> counted = new ConcurrentLinkedQueue<>();

  /** Measures the virtual machine, the process and the log. */
  public Metrics() {
    new JvmMemoryMetrics().bindTo(registry);
    new JvmThreadMetrics().bindTo(registry);
    new ProcessorMetrics().bindTo(registry);
    new FileDescriptorMetrics().bindTo(registry);
    new UptimeMetrics().bindTo(registry);
    collections.bindTo(registry);
    logLines.bindTo(registry);
  }

  /** For libraries that bring meters of their own. */
  public MeterRegistry registry() {
    return registry;
  }

  /** How long requests take. */
  public RequestTimes requestTimes() {
    return requestTimes;
  }

  /**
   * Tells of something that goes up and down, whenever somebody reads.
   *
   * @param value cheap to ask, never waits; NaN where it is not known
   * @param labels names and their values in turn
   */
  public void tell(String name, String what, DoubleSupplier value, String... labels) {
    Gauge.builder(name, value, DoubleSupplier::getAsDouble)
        .description(what)
        .tags(Tags.of(labels))
        .strongReference(true)
        .register(registry);
  }

  /**
   * Tells of something that only grows, as long as the process lives.
   *
   * @param count cheap to ask, never waits
   * @param labels names and their values in turn
   */
  public void count(String name, String what, DoubleSupplier count, String... labels) {
    // The library itself holds it only as long as somebody else does.
    counted.add(count);
    FunctionCounter.builder(name, count, DoubleSupplier::getAsDouble)
        .description(what)
        .tags(Tags.of(labels))
        .register(registry);
  }

  /** Everything as it is now, in the text format. */
  public String text() {
    return registry.scrape();
  }

  @Override
  public void close() {
    logLines.close();
    collections.close();
    registry.close();
  }
}
