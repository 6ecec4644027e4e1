package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * What a setup was made from, and what was made from it.
 *
 * @param parent its title then; without a path where it is no longer in the catalogue
 * @param children may be empty
 */
public record Kin(Optional<Link> parent, List<Link> children) {

  public Kin {
    children = List.copyOf(children);
  }
}
