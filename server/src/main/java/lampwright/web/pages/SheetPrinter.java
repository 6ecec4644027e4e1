package lampwright.web.pages;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.IntFunction;
import lampwright.tasks.Refused;

/**
 * Makes the field sheet into a PDF for people who cannot see it too (ISO 14289-1), of two sides at
 * most. Nothing is read from anywhere but from the program itself, whatever a text says.
 */
public final class SheetPrinter {

  /** Nobody waits longer for a place; a sheet takes about a second. */
  private static final Duration LONGEST_WAIT = Duration.ofSeconds(10);

  private static final int MOST_AT_ONCE = 2;
  private static final int MOST_SIDES = 2;
  private static final String FOLDER = "/lampwright/sheet-fonts/";

  /** Addresses of this scheme lead to our fonts; no other leads anywhere. */
  private static final String SCHEME = "sheet-font";

  private static final String[] FONTS = {
    "atkinson-hyperlegible-mono-400.ttf",
    "atkinson-hyperlegible-mono-600.ttf",
    "atkinson-hyperlegible-next-400.ttf",
    "atkinson-hyperlegible-next-600.ttf"
  };

  private final Templates templates;
  private final Map<String, byte[]> fonts = new TreeMap<>();
  private final String style;
  private final String drawingStyle;
  private final Semaphore places = new Semaphore(MOST_AT_ONCE, true);

  /**
   * Reads fonts and styles once.
   *
   * @throws IllegalStateException where the program was packed without one of them
   */
  public SheetPrinter(Templates templates) {
    // It would quote what people wrote, and tell of each font that it loads.
    XRLog.setLoggingEnabled(false);
    this.templates = templates;
    for (String font : FONTS) {
      fonts.put(SCHEME + ":" + font, bytes(FOLDER + font));
    }
    drawingStyle = text("/lampwright/assets/" + Assets.PAPER_PLAN);
    style = text("/lampwright/sheet-fonts/pages.css") + text("/lampwright/assets/" + Assets.PAPER);
  }

  /**
   * A sheet on paper.
   *
   * @param sides 1 or 2
   */
  public record Printed(int sides, Bytes pdf) {}

  /** Bytes that nobody changes. */
  public static final class Bytes {
    private final byte[] bytes;

    private Bytes(byte[] bytes) {
      this.bytes = bytes;
    }

    public InputStream open() {
      return new ByteArrayInputStream(bytes);
    }

    public int length() {
      return bytes.length;
    }
  }

  /** The page that is printed, as markup: who has the same has the same sheet. */
  public String markup(SheetPage page, SheetFile.Paper paper) {
    return lawful(templates.render("sheetPdf", new SheetFile(page, paper, style, drawingStyle)));
  }

  /**
   * Prints, in tighter and tighter room until it is on two sides.
   *
   * @param first the number of the room to begin with
   * @param page the sheet in the room of a number
   * @throws Refused Unavailable where others print and go on printing
   */
  Printed print(int first, IntFunction<SheetPage> page, SheetFile.Paper paper) {
    try {
      if (!places.tryAcquire(LONGEST_WAIT.toMillis(), TimeUnit.MILLISECONDS)) {
        throw Refused.unavailable(LONGEST_WAIT);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw Refused.unavailable(LONGEST_WAIT);
    }
    try {
      int room = first;
      while (true) {
        Optional<Printed> printed = print(markup(page.apply(room), paper), SheetRoom.isLast(room));
        if (printed.isPresent()) {
          return printed.get();
        }
        room++;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      places.release();
    }
  }

  /** Empty where it would take a third side and may not. */
  private Optional<Printed> print(String markup, boolean atAnyLength) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (BatikSVGDrawer drawer = new BatikSVGDrawer();
        PdfBoxRenderer renderer =
            new PdfRendererBuilder()
                .usePdfUaAccessibility(true)
                .useSVGDrawer(drawer)
                .useUnicodeLineBreaker(new SpaceBreaker())
                .withProducer("Lampwright")
                .useUriResolver((_, uri) -> fonts.containsKey(uri) ? uri : null)
                .useHttpStreamImplementation(this::font)
                .useProtocolsStreamImplementation(
                    this::font, SCHEME, "http", "https", "file", "jar", "data")
                .useExternalResourceAccessControl(
                    (uri, _) -> fonts.containsKey(uri),
                    ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI)
                .useExternalResourceAccessControl(
                    (uri, _) -> fonts.containsKey(uri),
                    ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI)
                .withHtmlContent(markup, null)
                .toStream(out)
                .buildPdfRenderer()) {
      renderer.layout();
      int sides = renderer.getRootBox().getLayer().getPages().size();
      if (sides > MOST_SIDES && !atAnyLength) {
        return Optional.empty();
      }
      renderer.createPDF();
      return Optional.of(new Printed(sides, new Bytes(out.toByteArray())));
    }
  }

  private FSStream font(String uri) {
    byte[] bytes = fonts.getOrDefault(uri, new byte[0]);
    return new FSStream() {
      @Override
      public InputStream getStream() {
        return new ByteArrayInputStream(bytes);
      }

      @Override
      public Reader getReader() {
        return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
      }
    };
  }

  /** Without letters that XML does not allow. */
  private static String lawful(String markup) {
    return markup.replaceAll("[^\\t\\n\\r\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]", " ");
  }

  private static String text(String name) {
    return new String(bytes(name), StandardCharsets.UTF_8);
  }

  private static byte[] bytes(String name) {
    try (InputStream in = SheetPrinter.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("The program was packed without " + name + ".");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
