package lampwright.engine;

/**
 * Where a formula or a number comes from. Each has a key that pages, JSON and comments use; the
 * full entry stands under that key in REFERENCES.md beside this file.
 */
public enum Source {
  /** Definitions of Av, Tv, EV and EV100, and the table of typical scenes. */
  EXPOSURE_VALUE("exposure-value", "Encyclopaedia articles on exposure value and APEX", "APEX"),
  /** Constants of reflected and incident meters, as quoted by others. */
  ISO_2720("iso-2720", "ISO 2720:1974, exposure meters, as quoted", "constants K and C"),
  /** Flash meters integrate light over a gate time. */
  ISO_10157("iso-10157", "ISO 10157:1991, flash exposure meters, abstract", "scope"),
  /** Guide numbers; the constants of the standard itself were not seen. */
  GUIDE_NUMBER("guide-number", "ISO 1230:1992, flash guide numbers, title and scope", "scope"),
  /** Inverse square law, five-times rule, integrated flash intensity. */
  IES_DEFINITIONS("ies-definitions", "IES lighting definitions", "9.1.1 and 11.1.10.2"),
  /** Configuration factors of discs, rectangles and ellipses. */
  HOWELL("howell", "Howell, catalogue of radiation configuration factors", "B-3, B-12, B-18"),
  /** Light from an even polygon to any point and direction. */
  LAMBERT_CONTOUR(
      "lambert-contour",
      "Lambert's contour formula, as cited in report UUCS-00-012 of the University of Utah",
      "abstract"),
  /** Parallel and perpendicular rectangles, in use by fire engineers. */
  BR_187("br-187", "BR 187, external fire spread", "configuration factors"),
  /** Flash duration from pulse shape; how heads are controlled; efficacy of flash tubes. */
  FLASH_MAKERS_NOTES("flash-makers-notes", "Public engineering notes on studio flash", "pulses"),
  /** Files of measured intensities; field order as a vendor's page gives it. */
  LM_63("lm-63", "ANSI/IES LM-63, electronic transfer of photometric data, as quoted", "fields"),
  /** Effective and total flash duration. */
  ISO_2827("iso-2827", "ISO 2827:1988, photographic flash equipment, as quoted", "t0.5 and t0.1"),
  /** Drag of a flat plate square to the wind. */
  NASA_DRAG("nasa-drag", "NASA, Shape Effects on Drag", "flat plate"),
  /** Wind force numbers and their speeds. */
  BEAUFORT("beaufort", "Beaufort scale, Met Office table as quoted", "metres a second"),
  /** Signals of the usual picture and the light they mean. */
  IEC_61966("iec-61966", "IEC 61966-2-1:1999, sRGB, as quoted", "transfer and matrix"),
  /** Lightness, chroma and hue. */
  CIE_15("cie-15", "CIE 15, colorimetry, as quoted", "CIELAB"),
  /** A perceptual space with even hues. */
  OKLAB("oklab", "Ottosson, a perceptual color space for image processing (2020)", "matrices"),
  /** Colour difference and its test data. */
  CIEDE2000(
      "ciede2000",
      "Sharma, Wu and Dalal, the CIEDE2000 color-difference formula, Color Res. Appl. 30 (2005)",
      "pp. 21-30"),
  /** Mireds and filter shifts. */
  WHEELER("wheeler", "Wheeler, Practical Cinematography", "p. 122"),
  /** Thin-lens optics as any textbook has them. */
  THIN_LENS("thin-lens", "Geometrical optics of the thin lens", "derived"),
  /** Trade habit without a source; editable data, not law. */
  TRADE_PRACTICE("trade-practice", "Common practice of the trade", "no source"),
  /** Derived from the definitions and checked numerically. */
  DERIVED("derived", "Derived from the definitions and checked numerically", "this package"),
  /** Points and weights whose mean is a disc's. */
  ABRAMOWITZ_STEGUN(
      "abramowitz-stegun",
      "Abramowitz and Stegun, Handbook of Mathematical Functions (1964)",
      "25.4.61"),
  /** Bounds by prices on what is scarce, and how to raise them. */
  LAGRANGIAN_RELAXATION(
      "lagrangian-relaxation",
      "Fisher, the Lagrangian relaxation method for solving integer programming problems,"
          + " Management Science 27 (1981)",
      "pp. 1-18"),
  /** A steadier way to raise such bounds. */
  VOLUME_ALGORITHM(
      "volume-algorithm",
      "Barahona and Anbil, the volume algorithm, Mathematical Programming 87 (2000)",
      "pp. 385-399"),
  /** The sun's position at an instant and a place. */
  REDA_ANDREAS(
      "reda-andreas",
      "Reda and Andreas, solar position algorithm, NREL/TP-560-34302 (rev. 2008)",
      "sections 3.1 to 3.14"),
  /** Illuminance of sun and clear sky by the sun's elevation. */
  USNO_CIRCULAR_171(
      "usno-circular-171",
      "Janiczek and DeYoung, US Naval Observatory Circular 171 (1987), as transcribed",
      "SUN, ALTAZ, REFR, ATMOS"),
  /** Civil, nautical and astronomical twilight. */
  TWILIGHT_DEFINITIONS(
      "twilight-definitions",
      "Glossary of Meteorology, American Meteorological Society",
      "twilight"),
  /** A number that a person measured or set; it comes from nowhere else. */
  GIVEN("given", "Measured or set by the photographer", "the setup");

  private final String key;
  private final String title;
  private final String section;

  Source(String key, String title, String section) {
    this.key = key;
    this.title = title;
    this.section = section;
  }

  /** Returns the key, lower case with hyphens, stable for ever. */
  public String key() {
    return key;
  }

  /** Returns what the source is called. */
  public String title() {
    return title;
  }

  /** Returns where in it to look. */
  public String section() {
    return section;
  }
}
