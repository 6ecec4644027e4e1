package lampwright.setup.packing;

import java.util.Optional;
import lampwright.setup.figures.MainsFigures;

/**
 * What one setup draws from the mains. Whether circuits carry it is for their breakers, the makers'
 * instructions and a licensed electrician to say.
 *
 * @param setup its place in the order of the day, from 0
 * @param figures heads on one pack are counted each by itself, so this is an upper bound
 * @param circuits the fewest that could share the load, by what one of them carries at the place;
 *     absent where that is not known. Heads cannot be cut up, so more may be needed.
 */
public record MainsNeed(int setup, MainsFigures figures, Optional<Integer> circuits) {}
