package lampwright;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;

/**
 * A test that starts whole programs as processes: servers that it kills, stops or starves, a store
 * that it takes away, a database and its replica, tools that it has npm install. {@code mvn verify}
 * leaves it out, {@code mvn -Pprocesses} runs it, CI runs both.
 */
@Tag("processes")
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface LongProgram {}
