package lampwright.setup.comparing;

import java.util.Optional;
import lampwright.language.Said;

/**
 * One thing in which two documents differ.
 *
 * @param pointer JSON Pointer to it: into the second document where a light was added, else into
 *     the first; {@code /lights} for the order of the lights, whose values are their ids
 * @param before the value as the first document writes it; absent where it says nothing
 * @param after as the second writes it
 * @param unit of both values; empty where they have none
 * @param sentence for people
 */
public record Change(
    String pointer,
    About about,
    Optional<Object> before,
    Optional<Object> after,
    String unit,
    Said sentence) {}
