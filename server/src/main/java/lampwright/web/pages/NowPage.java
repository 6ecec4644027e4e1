package lampwright.web.pages;

import java.util.Optional;
import lampwright.wording.ReactionLines;

/**
 * What to change now.
 *
 * @param title the setup's
 * @param answer absent where nothing was asked, or not rightly
 */
public record NowPage(
    Layout layout,
    String title,
    String setupPath,
    NowForm form,
    FormErrors errors,
    Optional<ReactionLines> answer) {}
