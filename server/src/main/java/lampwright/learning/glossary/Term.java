package lampwright.learning.glossary;

import static lampwright.learning.glossary.TermGroup.AMBIENT_AND_SUN;
import static lampwright.learning.glossary.TermGroup.COLOUR;
import static lampwright.learning.glossary.TermGroup.DEPTH_AND_MOVEMENT;
import static lampwright.learning.glossary.TermGroup.LIGHTS_AND_ROLES;
import static lampwright.learning.glossary.TermGroup.LIGHT_AND_EXPOSURE;
import static lampwright.learning.glossary.TermGroup.OUR_OWN_WORDS;
import static lampwright.learning.glossary.TermGroup.POWER_AND_SAFETY;
import static lampwright.learning.glossary.TermGroup.SHAPE_AND_SOFTNESS;

import java.util.List;
import java.util.Locale;
import lampwright.setup.Role;

/**
 * A word that the glossary explains. Its phrases end in {@link #key}: its name, its text, and how
 * it stands in this program.
 */
public enum Term {
  STOP(LIGHT_AND_EXPOSURE),
  EXPOSURE(LIGHT_AND_EXPOSURE),
  READING(LIGHT_AND_EXPOSURE),
  OFFSET(LIGHT_AND_EXPOSURE),
  EV100(LIGHT_AND_EXPOSURE),
  GREY_FILTER(LIGHT_AND_EXPOSURE),
  INVERSE_SQUARE(LIGHT_AND_EXPOSURE),

  ROLE(LIGHTS_AND_ROLES),
  TARGET(LIGHTS_AND_ROLES),
  KEY(LIGHTS_AND_ROLES),
  FILL(LIGHTS_AND_ROLES),
  LIGHTING_RATIO(LIGHTS_AND_ROLES),
  BACK(LIGHTS_AND_ROLES),
  RIM(LIGHTS_AND_ROLES),
  KICKER(LIGHTS_AND_ROLES),
  HAIR(LIGHTS_AND_ROLES),
  BACKGROUND(LIGHTS_AND_ROLES),
  ACCENT(LIGHTS_AND_ROLES),

  SOFTNESS(SHAPE_AND_SOFTNESS),
  PENUMBRA(SHAPE_AND_SOFTNESS),
  MODIFIER(SHAPE_AND_SOFTNESS),
  FEATHERING(SHAPE_AND_SOFTNESS),
  FALL_OFF(SHAPE_AND_SOFTNESS),
  SPILL(SHAPE_AND_SOFTNESS),

  FLASH_ENERGY(TermGroup.FLASH),
  POWER_SETTING(TermGroup.FLASH),
  FLASH_DURATION(TermGroup.FLASH),
  SYNC_TIME(TermGroup.FLASH),

  AMBIENT(AMBIENT_AND_SUN),
  GOLDEN_HOUR(AMBIENT_AND_SUN),
  AMBIENT_OFFSET(AMBIENT_AND_SUN),

  MIRED(COLOUR),
  GEL(COLOUR),
  WHITE_BALANCE(COLOUR),

  FREEZING(DEPTH_AND_MOVEMENT),
  GHOST(DEPTH_AND_MOVEMENT),
  CIRCLE_OF_CONFUSION(DEPTH_AND_MOVEMENT),
  DEPTH_OF_FIELD(DEPTH_AND_MOVEMENT),

  RECYCLE(POWER_AND_SAFETY),
  MAINS_LOAD(POWER_AND_SAFETY),
  BALLAST(POWER_AND_SAFETY),
  STORED_CHARGE(POWER_AND_SAFETY),

  SETUP(OUR_OWN_WORDS),
  ADAPTATION(OUR_OWN_WORDS),
  SIGNATURE(OUR_OWN_WORDS),
  STOP_RULER(OUR_OWN_WORDS),
  READING_MAP(OUR_OWN_WORDS),
  BUILD_ORDER(OUR_OWN_WORDS),
  RUN_THROUGH(OUR_OWN_WORDS),
  TAKE(OUR_OWN_WORDS),
  FIELD_SHEET(OUR_OWN_WORDS);

  /** The page that explains them all. */
  public static final String PAGE = "/glossary";

  private final TermGroup group;

  Term(TermGroup group) {
    this.group = group;
  }

  /** The term for what a light is for. */
  public static Term of(Role role) {
    return switch (role) {
      case KEY -> KEY;
      case FILL -> FILL;
      case BACK -> BACK;
      case RIM -> RIM;
      case KICKER -> KICKER;
      case HAIR -> HAIR;
      case BACKGROUND -> BACKGROUND;
      case ACCENT -> ACCENT;
    };
  }

  public TermGroup group() {
    return group;
  }

  /** As keys of phrases write it: "ambient_offset". */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** As addresses write it: "ambient-offset". */
  public String anchor() {
    return key().replace('_', '-');
  }

  /** Where it is explained: "/glossary#ambient-offset". */
  public String path() {
    return PAGE + "#" + anchor();
  }

  /** The terms that its reader may want next, at least one, itself not among them. */
  public List<Term> seeAlso() {
    return switch (this) {
      case STOP -> List.of(EXPOSURE, OFFSET, INVERSE_SQUARE);
      case EXPOSURE -> List.of(STOP, READING, GREY_FILTER);
      case READING -> List.of(TARGET, STOP, EXPOSURE);
      case OFFSET -> List.of(EXPOSURE, AMBIENT_OFFSET, STOP_RULER);
      case EV100 -> List.of(AMBIENT, EXPOSURE);
      case GREY_FILTER -> List.of(STOP, AMBIENT_OFFSET);
      case INVERSE_SQUARE -> List.of(FALL_OFF, SOFTNESS, STOP);
      case ROLE -> List.of(KEY, BACK, ACCENT, TARGET);
      case KEY -> List.of(FILL, LIGHTING_RATIO, SOFTNESS);
      case FILL -> List.of(KEY, LIGHTING_RATIO);
      case BACK -> List.of(RIM, KICKER, HAIR);
      case RIM -> List.of(BACK, KICKER);
      case KICKER -> List.of(RIM, BACK);
      case HAIR -> List.of(RIM, BACK);
      case BACKGROUND -> List.of(ACCENT, SPILL);
      case ACCENT -> List.of(BACKGROUND, ROLE);
      case TARGET -> List.of(READING, ROLE);
      case LIGHTING_RATIO -> List.of(KEY, FILL, STOP);
      case MODIFIER -> List.of(SOFTNESS, SPILL, BALLAST);
      case SOFTNESS -> List.of(PENUMBRA, MODIFIER, FALL_OFF);
      case PENUMBRA -> List.of(SOFTNESS);
      case FALL_OFF -> List.of(INVERSE_SQUARE, FEATHERING, READING_MAP);
      case FEATHERING -> List.of(FALL_OFF, SPILL);
      case SPILL -> List.of(FEATHERING, MODIFIER, TARGET);
      case FLASH_ENERGY -> List.of(POWER_SETTING, RECYCLE, STORED_CHARGE);
      case POWER_SETTING -> List.of(FLASH_ENERGY, FLASH_DURATION, STOP);
      case FLASH_DURATION -> List.of(FREEZING, POWER_SETTING);
      case SYNC_TIME -> List.of(AMBIENT_OFFSET, FLASH_DURATION);
      case AMBIENT -> List.of(AMBIENT_OFFSET, EV100, GOLDEN_HOUR);
      case AMBIENT_OFFSET -> List.of(AMBIENT, OFFSET, SYNC_TIME, GHOST);
      case GOLDEN_HOUR -> List.of(AMBIENT, MIRED);
      case MIRED -> List.of(GEL, WHITE_BALANCE);
      case GEL -> List.of(MIRED, STOP);
      case WHITE_BALANCE -> List.of(MIRED, GEL);
      case FREEZING -> List.of(FLASH_DURATION, GHOST, CIRCLE_OF_CONFUSION);
      case GHOST -> List.of(AMBIENT_OFFSET, FREEZING);
      case CIRCLE_OF_CONFUSION -> List.of(DEPTH_OF_FIELD, FREEZING);
      case DEPTH_OF_FIELD -> List.of(CIRCLE_OF_CONFUSION, EXPOSURE);
      case RECYCLE -> List.of(FLASH_ENERGY, POWER_SETTING);
      case MAINS_LOAD -> List.of(RECYCLE, STORED_CHARGE);
      case BALLAST -> List.of(MODIFIER);
      case STORED_CHARGE -> List.of(FLASH_ENERGY, MAINS_LOAD);
      case SETUP -> List.of(ADAPTATION, SIGNATURE, BUILD_ORDER);
      case ADAPTATION -> List.of(SETUP, STOP_RULER, OFFSET);
      case SIGNATURE -> List.of(SETUP, SOFTNESS, LIGHTING_RATIO);
      case STOP_RULER -> List.of(STOP, OFFSET, ADAPTATION);
      case READING_MAP -> List.of(READING, SPILL, FALL_OFF);
      case BUILD_ORDER -> List.of(RUN_THROUGH, READING, FIELD_SHEET);
      case RUN_THROUGH -> List.of(BUILD_ORDER, TAKE);
      case TAKE -> List.of(RUN_THROUGH, SETUP);
      case FIELD_SHEET -> List.of(BUILD_ORDER, SETUP);
    };
  }
}
