package lampwright.planted.tasks;

import io.micrometer.core.instrument.MeterRegistry;

/** Meters belong to the metrics. */
record Measures(MeterRegistry registry) {}
