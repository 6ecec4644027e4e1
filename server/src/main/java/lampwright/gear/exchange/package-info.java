/**
 * Gear as a file: tables in CSV (RFC 4180), as spreadsheets read and write them, and JSON; written,
 * and read back line by line with every fault at its line and column. The only room for the CSV
 * library; may import {@code document}, {@code gear.stock} and {@code people}. Start reading at
 * {@link lampwright.gear.exchange.GearTable} and {@link lampwright.gear.exchange.GearTableReader}.
 */
@NullMarked
package lampwright.gear.exchange;

import org.jspecify.annotations.NullMarked;
