package lampwright.planted.tasks;

import com.zaxxer.hikari.HikariConfig;

/** Connections belong to the store. */
record Connects(HikariConfig pool) {}
