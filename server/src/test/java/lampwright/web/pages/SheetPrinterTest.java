package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import lampwright.document.Reading;
import lampwright.setup.DemoSeeds;
import lampwright.setup.SetupDocument;
import lampwright.wording.Wording;
import lampwright.wording.WordsForTests;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The field sheet's file, read back by PDFBox and looked at by ZXing. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SheetPrinterTest {

  private static final DemoSeeds SEEDS = new DemoSeeds();
  private static final Wording ENGLISH = WordsForTests.usual();

  private final SheetPrinter printer = new SheetPrinter(new Templates());
  private PDDocument sheet = new PDDocument();

  @BeforeAll
  void aSheetIsPrinted() throws IOException {
    sheet = print(SEEDS.setup("gate-nine"), ENGLISH, SheetFile.Paper.A4);
  }

  private PDDocument print(SetupDocument setup, Wording words, SheetFile.Paper paper)
      throws IOException {
    SheetPrinter.Printed printed = SheetsForTests.print(printer, setup, words, paper);
    try (InputStream in = printed.pdf().open()) {
      PDDocument read = Loader.loadPDF(in.readAllBytes());
      assertEquals(printed.sides(), read.getNumberOfPages());
      return read;
    }
  }

  private static String text(PDDocument pdf) throws IOException {
    return new PDFTextStripper().getText(pdf).replaceAll("[\\s\\u00a0]+", " ");
  }

  @Test
  void itSaysWhatItIsAndInWhichLanguage() {
    assertEquals(
        SEEDS.setup("gate-nine").title() + " – Field sheet",
        sheet.getDocumentInformation().getTitle());
    assertEquals("Imke Tal", sheet.getDocumentInformation().getAuthor());
    assertEquals("en", sheet.getDocumentCatalog().getLanguage());
    assertTrue(sheet.getDocumentCatalog().getViewerPreferences().displayDocTitle());
  }

  /** ISO 14289-1, 7.1 and 7.5: all content is tagged, tables have rows of headers and data. */
  @Test
  void itIsTagged() {
    assertTrue(sheet.getDocumentCatalog().getMarkInfo().isMarked());
    assertNotNull(sheet.getDocumentCatalog().getMetadata());
    List<String> kinds = new ArrayList<>();
    List<String> alternatives = new ArrayList<>();
    walk(sheet.getDocumentCatalog().getStructureTreeRoot(), kinds, alternatives);
    for (String kind : List.of("H1", "H2", "Table", "TR", "TH", "TD", "Figure")) {
      assertTrue(kinds.contains(kind), kind + " in " + new TreeSet<>(kinds));
    }
    assertEquals(3, alternatives.size(), "plan, elevation and code in words: " + alternatives);
  }

  private static void walk(PDStructureNode node, List<String> kinds, List<String> alternatives) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        kinds.add(element.getStructureType());
        if (element.getAlternateDescription() != null
            && !element.getAlternateDescription().isBlank()) {
          alternatives.add(element.getAlternateDescription());
        }
        walk(element, kinds, alternatives);
      }
    }
  }

  @Test
  void everyFontIsInTheFile() throws IOException {
    List<String> names = new ArrayList<>();
    for (PDPage page : sheet.getPages()) {
      for (COSName name : page.getResources().getFontNames()) {
        PDFont font = page.getResources().getFont(name);
        assertTrue(font.isEmbedded(), font.getName());
        names.add(font.getName());
      }
    }
    assertTrue(names.stream().anyMatch(name -> name.contains("Mono")), names.toString());
  }

  @Test
  void figuresAndSignsCanBeReadBack() throws IOException {
    String english = text(sheet);
    assertTrue(english.contains("f/"), english);
    assertTrue(english.contains("Light by light, in build order"), english);
    assertTrue(english.contains("Shutter 1/"), english);
    assertTrue(english.contains("→"), english);
    assertTrue(english.contains("−"), english);
    String german;
    try (PDDocument read =
        print(
            SEEDS.setup("deep-end-choir"),
            WordsForTests.germanFeetAndThirds(),
            SheetFile.Paper.LETTER)) {
      assertEquals("de", read.getDocumentCatalog().getLanguage());
      assertEquals(612, read.getPage(0).getMediaBox().getWidth(), 0.5);
      german = text(read);
    }
    for (String sign : List.of("Führungslicht", "Höhe", "°", "′", "″", "⅓", "„")) {
      assertTrue(german.contains(sign), sign + " in " + german);
    }
    assertFalse((english + german).contains("#"), "a sign that no font of ours has");
  }

  /** All 75 were printed by hand; these are the fullest, the emptiest, and some between. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "halyard-noon",
        "the-understudy",
        "coat-thrown",
        "over-the-cut",
        "one-chair-too-many",
        "two-at-a-time",
        "nine-turns",
        "the-swimmer-who-stayed",
        "salt-widow"
      })
  void aSetupFitsOnTwoSides(String name) throws IOException {
    SetupDocument setup = SEEDS.setup(name);
    try (PDDocument read = print(setup, ENGLISH, SheetFile.Paper.LETTER)) {
      assertTrue(read.getNumberOfPages() <= 2, name + " " + read.getNumberOfPages());
      String text = text(read);
      assertTrue(text.contains("licensed practice"), "no sentence that defers: " + text);
    }
  }

  /** The demo's fullest has nine; three more, with a reason each, stand beside some of those. */
  @Test
  void twelveLightsFitOnTwoSidesAndEachHasItsRow() throws IOException {
    Map<String, Object> written =
        new HashMap<>(SetupDocument.FORM.writeObject(SEEDS.setup("one-chair-too-many")));
    List<Object> lights = new ArrayList<>((List<?>) written.get("lights"));
    for (int more = 0; more < 3; more++) {
      Map<Object, Object> light = new HashMap<>((Map<?, ?>) lights.get(more));
      light.put("id", "more-" + more);
      lights.add(light);
    }
    written.put("lights", lights);
    for (SheetFile.Paper paper : SheetFile.Paper.values()) {
      try (PDDocument read = print(sound(written), WordsForTests.germanFeetAndThirds(), paper)) {
        assertEquals(2, read.getNumberOfPages());
        String text = text(read);
        for (int number = 1; number <= 12; number++) {
          assertTrue(text.contains(" " + number + " "), number + " in " + text);
        }
      }
    }
  }

  private static SetupDocument sound(Map<String, Object> written) {
    return switch (SetupDocument.FORM.read(written)) {
      case Reading.Sound<SetupDocument>(SetupDocument sound) -> sound;
      case Reading.Faulty<SetupDocument> faulty -> throw new AssertionError(faulty.problems());
    };
  }

  @Test
  void aCautionStandsWholeOrByItsNameButIsNeverCut() throws IOException {
    Map<String, Object> written =
        new HashMap<>(SetupDocument.FORM.writeObject(SEEDS.setup("one-chair-too-many")));
    String sentence = "Keep the third stand off the wet planks because the tide turns early. ";
    String last = "Nobody walks there alone.";
    written.put("cautions", Collections.nCopies(20, (sentence.repeat(8) + last).strip()));
    try (PDDocument read = print(sound(written), ENGLISH, SheetFile.Paper.A4)) {
      String text = text(read);
      int whole = text.split(last, -1).length - 1;
      assertEquals(text.split(sentence.strip(), -1).length - 1, 8 * whole, text);
      assertTrue(text.contains("and " + (20 - whole) + " more on the page"), text);
      assertEquals(2, read.getNumberOfPages());
    }
  }

  @Test
  void whatPeopleWroteStaysTextAndReachesNothing() throws IOException {
    String evil =
        "</p><script>alert(1)</script><img src=\"http://127.0.0.1:9/x\"/><link rel=\"stylesheet\""
            + " href=\"file:///etc/passwd\"/> &amp; ]]> \u0001 \uD83D\uDD25";
    Map<String, Object> written =
        new HashMap<>(SetupDocument.FORM.writeObject(SEEDS.setup("the-understudy")));
    written.put("title", evil.substring(0, 100).replace("\u0001", ""));
    written.put("cautions", List.of(evil.replace("\u0001", "")));
    SetupDocument setup = sound(written);
    try (PDDocument read = print(setup, ENGLISH, SheetFile.Paper.A4)) {
      String text = text(read);
      assertTrue(text.contains("<script>alert(1)</script>"), text);
      assertTrue(text.contains("href=\"file:///etc/passwd\""), text);
      assertFalse(text.contains("root:"), text);
      for (PDPage page : read.getPages()) {
        assertEquals(List.of(), page.getAnnotations());
      }
    }
  }

  /** ZXing as a second opinion of what a phone reads from the paper, at 150 dots to the inch. */
  @Test
  void aPhoneComesBackByTheCode() throws Exception {
    BufferedImage image = new PDFRenderer(sheet).renderImageWithDPI(0, 150);
    int left = image.getWidth() * 3 / 4;
    BufferedImage corner = image.getSubimage(left, 0, image.getWidth() - left, 300);
    int[] pixels =
        corner.getRGB(0, 0, corner.getWidth(), corner.getHeight(), null, 0, corner.getWidth());
    String read =
        new QRCodeReader()
            .decode(
                new BinaryBitmap(
                    new HybridBinarizer(
                        new RGBLuminanceSource(corner.getWidth(), corner.getHeight(), pixels))))
            .getText();
    assertEquals(SheetsForTests.ADDRESS, read);
  }
}
