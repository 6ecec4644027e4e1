package lampwright.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ByteRangeTest {

  private static final String TAG = "\"a\"";

  /** RFC 9110, section 14.1.2 (of 10,000 bytes) and section 14.4 (of 1,234 bytes). */
  @ParameterizedTest
  @CsvSource({
    "bytes=0-499, 10000, 0, 499",
    "bytes=500-999, 10000, 500, 999",
    "bytes=-500, 10000, 9500, 9999",
    "bytes=9500-, 10000, 9500, 9999",
    "bytes=0-499, 1234, 0, 499",
    "bytes=500-999, 1234, 500, 999",
    "bytes=500-, 1234, 500, 1233",
    "bytes=-500, 1234, 734, 1233"
  })
  void oneRangeIsThePartThatRfc9110Says(String header, long length, long first, long last) {
    assertEquals(new ByteRange.Part(first, last), ByteRange.of(header, null, TAG, length));
  }

  /** RFC 9110, section 14.1.2: what reaches over the end is cut there, a long suffix is all. */
  @ParameterizedTest
  @CsvSource({"bytes=90-900, 90, 99", "bytes=-900, 0, 99", "BYTES=0-0, 0, 0"})
  void whatReachesOverTheEndIsCut(String header, long first, long last) {
    assertEquals(new ByteRange.Part(first, last), ByteRange.of(header, null, TAG, 100));
  }

  /** RFC 9110, section 15.5.17: a first position beyond the end, or a suffix of nothing. */
  @ParameterizedTest
  @ValueSource(strings = {"bytes=100-", "bytes=100-200", "bytes=-0"})
  void whatLiesBehindTheEndIsNowhere(String header) {
    assertInstanceOf(ByteRange.Nowhere.class, ByteRange.of(header, null, TAG, 100));
  }

  /** RFC 9110, section 14.2: other units and what is invalid are ignored, several may be. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "lines=0-1",
        "bytes=5-2",
        "bytes=",
        "bytes=-",
        "bytes=a-b",
        "bytes=0-0,-1",
        "bytes 0-1",
        "bytes=0-99999999999999999999"
      })
  void whatIsNoSingleRangeIsAnsweredWhole(String header) {
    assertInstanceOf(ByteRange.Whole.class, ByteRange.of(header, null, TAG, 100));
  }

  /** RFC 9110, section 13.1.5: strong comparison, and a date is none of ours. */
  @Test
  void aPartIsGivenOnlyOfWhatIfRangeNames() {
    assertEquals(new ByteRange.Part(0, 1), ByteRange.of("bytes=0-1", TAG, TAG, 100));
    for (String other : new String[] {"\"b\"", "W/\"a\"", "Fri, 27 Nov 2026 00:00:00 GMT"}) {
      assertInstanceOf(ByteRange.Whole.class, ByteRange.of("bytes=0-1", other, TAG, 100));
    }
  }
}
