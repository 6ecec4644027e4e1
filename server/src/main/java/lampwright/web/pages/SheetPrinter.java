package lampwright.web.pages;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
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
import java.io.OutputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntFunction;
import lampwright.tasks.Refused;
import lampwright.tasks.Turns;

/**
 * Makes the field sheet into a PDF for people who cannot see it too (ISO 14289-1), of two sides at
 * most. Nothing is read from anywhere but from the program itself, whatever a text says.
 */
public final class SheetPrinter {

  /** Nobody waits longer for a place; a sheet takes about a second. */
  private static final Duration LONGEST_WAIT = Duration.ofSeconds(10);

  private static final int MOST_AT_ONCE = 2;
  private static final int MOST_SIDES = 2;

  /** Of a hundred kilobytes each. */
  private static final int MOST_ROOMS_KNOWN = 100;

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

  /** By the markup in the first room: a sheet that is looked at is often printed next. */
  private final Cache<String, Integer> rooms =
      Caffeine.newBuilder().maximumSize(MOST_ROOMS_KNOWN).build();

  private final Turns turns = new Turns(MOST_AT_ONCE, LONGEST_WAIT, LONGEST_WAIT);

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
   * Finds the first room, from one to tighter ones, in which a sheet is on two sides.
   *
   * @param first the number of the room to begin with
   * @param page the sheet in the room of a number
   * @throws Refused Unavailable where others print and go on printing
   */
  int room(int first, IntFunction<SheetPage> page, SheetFile.Paper paper) {
    String roomiest = markup(page.apply(first), paper);
    Integer known = rooms.getIfPresent(roomiest);
    if (known != null) {
      return known;
    }
    try (var _ = turns.take()) {
      int room = first;
      for (String markup = roomiest;
          !SheetRoom.isLast(room) && sides(markup) > MOST_SIDES;
          markup = markup(page.apply(room), paper)) {
        room++;
      }
      rooms.put(roomiest, room);
      return room;
    }
  }

  /**
   * Prints in the room that {@link #room} finds.
   *
   * @throws Refused Unavailable where others print and go on printing
   */
  Printed print(int first, IntFunction<SheetPage> page, SheetFile.Paper paper) {
    String markup = markup(page.apply(room(first, page, paper)), paper);
    try (var _ = turns.take()) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      try (BatikSVGDrawer drawer = new BatikSVGDrawer();
          PdfBoxRenderer renderer = renderer(markup, drawer, out)) {
        renderer.layout();
        renderer.createPDF();
        return new Printed(
            renderer.getRootBox().getLayer().getPages().size(), new Bytes(out.toByteArray()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private int sides(String markup) {
    try (BatikSVGDrawer drawer = new BatikSVGDrawer();
        PdfBoxRenderer renderer = renderer(markup, drawer, OutputStream.nullOutputStream())) {
      renderer.layout();
      return renderer.getRootBox().getLayer().getPages().size();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private PdfBoxRenderer renderer(String markup, BatikSVGDrawer drawer, OutputStream out)
      throws IOException {
    return new PdfRendererBuilder()
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
        .buildPdfRenderer();
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
