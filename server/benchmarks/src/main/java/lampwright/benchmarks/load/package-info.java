/**
 * How fast the whole server answers, how large it grows, and whether it stays so for hours:
 * programs that drive it from outside, as processes on one machine. Start with {@link
 * lampwright.benchmarks.load.Load} and {@link lampwright.benchmarks.load.Soak}.
 */
@org.jspecify.annotations.NullMarked
package lampwright.benchmarks.load;
