package lampwright;

import ch.qos.logback.classic.encoder.JsonEncoder;
import ch.qos.logback.classic.spi.ILoggingEvent;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import lampwright.document.Json;
import org.slf4j.event.KeyValuePair;

/**
 * One line of the log as one JSON object (RFC 8259): logback's own, with the time in UTC (RFC 3339)
 * and what a line tells by name as fields of its own.
 */
public final class JsonLine extends JsonEncoder {

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
          .withZone(ZoneOffset.UTC);

  /** Leaves out what says nothing here, or the same twice. */
  public JsonLine() {
    setWithSequenceNumber(false);
    setWithTimestamp(false);
    setWithNanoseconds(false);
    setWithContext(false);
    setWithMarkers(false);
    setWithKVPList(false);
    setWithMessage(false);
    setWithArguments(false);
    setWithFormattedMessage(true);
  }

  @Override
  protected void appendCustomFields(StringBuilder line, ILoggingEvent event) {
    appendValueSeparator(line, true);
    appenderMember(line, "time", TIME.format(event.getInstant()));
    List<KeyValuePair> pairs = event.getKeyValuePairs();
    if (pairs != null) {
      for (KeyValuePair pair : pairs) {
        appendValueSeparator(line, true);
        line.append(Json.print(pair.key)).append(':').append(Json.print(pair.value));
      }
    }
  }
}
