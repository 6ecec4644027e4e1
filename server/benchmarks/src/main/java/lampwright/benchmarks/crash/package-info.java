/**
 * Kills the server and its database at random while several clients write, starts them again, and
 * proves that nothing that was acknowledged is lost and nothing is there twice. Start with {@link
 * lampwright.benchmarks.crash.Crash}.
 */
@org.jspecify.annotations.NullMarked
package lampwright.benchmarks.crash;
