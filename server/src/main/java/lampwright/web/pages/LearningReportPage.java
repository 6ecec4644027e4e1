package lampwright.web.pages;

import java.util.List;

/**
 * Who can build what, and where people slip.
 *
 * @param trails the names of the trails, the heads of the table's columns
 */
public record LearningReportPage(
    Layout layout,
    String learningPath,
    List<String> trails,
    List<OfMember> members,
    List<OfKind> kinds,
    List<Slip> slips) {

  public LearningReportPage {
    trails = List.copyOf(trails);
    members = List.copyOf(members);
    kinds = List.copyOf(kinds);
    slips = List.copyOf(slips);
  }

  /**
   * One member.
   *
   * @param answered "7 of 9 right"; empty for who answered nothing
   * @param ways one for each trail
   */
  public record OfMember(String name, String role, String answered, List<OnTrail> ways) {
    public OfMember {
      ways = List.copyOf(ways);
    }
  }

  /**
   * How far a member is on a trail.
   *
   * @param counted "3 of 8"; empty for who has not begun
   * @param cleared what they may do alone; empty before
   */
  public record OnTrail(String counted, String cleared) {}

  /** One kind of drill over everybody. */
  public record OfKind(String kind, String counted) {}

  /** What was likely wrong, and how often. */
  public record Slip(String kind, String words, int times) {}
}
