package lampwright.planted.store;

import org.apache.lucene.index.Term;

/** The index's library belongs to the search. */
record Searches(Term term) {}
