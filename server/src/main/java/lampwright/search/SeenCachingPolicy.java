package lampwright.search;

import java.io.IOException;
import java.util.Set;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.QueryCachingPolicy;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.search.UsageTrackingQueryCachingPolicy;

/**
 * Whose matches a searcher keeps for each segment: always those that say which setups of a studio a
 * person sees, because every search asks for them and they match nearly all; of other queries those
 * that come often and cost much, as Lucene judges by itself.
 */
final class SeenCachingPolicy implements QueryCachingPolicy {

  private static final Set<String> ALWAYS =
      Set.of(EntryDocument.STUDIO, EntryDocument.ARCHIVED, EntryDocument.FOR_ALL);

  private final QueryCachingPolicy others = new UsageTrackingQueryCachingPolicy();

  @Override
  public void onUse(Query query) {
    others.onUse(query);
  }

  @Override
  public boolean shouldCache(Query query) throws IOException {
    return (query instanceof TermQuery term && ALWAYS.contains(term.getTerm().field()))
        || others.shouldCache(query);
  }
}
