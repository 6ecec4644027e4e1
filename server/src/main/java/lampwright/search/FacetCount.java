package lampwright.search;

import lampwright.search.filter.Filter;

/**
 * How many setups there are of one value.
 *
 * @param value as brackets have it behind the trait: {@code lonely}, {@code from -2 below -1}
 * @param label as people read it: {@code lonely}, {@code −2 to −1}
 * @param filter that finds just these
 */
public record FacetCount(String value, String label, Filter filter, long count) {}
