package lampwright.planted.web;

import software.amazon.awssdk.regions.Region;

/** Breaks {@code objectStoresStayInTheStore}. */
final class AsksAnObjectStore {

  Region region() {
    return Region.of("us-east-1");
  }
}
