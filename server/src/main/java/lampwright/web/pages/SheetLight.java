package lampwright.web.pages;

/**
 * A light on the field sheet, as it is set up on its stand.
 *
 * @param id in the document
 * @param number on the plan
 * @param gear head, modifier, gels
 * @param direction "242°"; empty on the hit mark
 * @param distance over the ground from the hit mark
 * @param height of the middle of its face
 * @param aim "at the face, 1.62 m up"
 * @param power as the head shows it
 * @param alone what the meter gives for it alone
 * @param together what the meter gives with all lights before it; "–" where that is not known
 */
public record SheetLight(
    String id,
    int number,
    String role,
    String gear,
    String direction,
    String distance,
    String height,
    String aim,
    String power,
    String alone,
    String together) {}
