package lampwright.web.pages;

import java.util.Optional;

/**
 * What somebody of the crew proposes that a setup was made like.
 *
 * @param place for the page's own addresses
 * @param headline who told it, and when
 * @param used against what the setup says now; absent where it does not fit it any more
 * @param accept where it is taken over; empty where the reader may not
 * @param decline where it is declined or taken back; empty where the reader may not
 * @param declining what that is called for the reader
 * @param revision of the setup that is looked at
 * @param remark to mind before it is taken over; may be empty
 */
public record ProposedPart(
    String place,
    String headline,
    Optional<UsedPart> used,
    String accept,
    String decline,
    String declining,
    String csrfToken,
    int revision,
    String remark) {}
