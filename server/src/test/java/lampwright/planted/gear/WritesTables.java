package lampwright.planted.gear;

import de.siegmar.fastcsv.writer.CsvWriter;

/** Only gear.exchange may use the library of tables. */
record WritesTables(CsvWriter writer) {}
