package lampwright.search;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;
import lampwright.search.filter.Traits;
import org.apache.lucene.document.BinaryDocValuesField;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.DoubleField;
import org.apache.lucene.document.Field.Store;
import org.apache.lucene.document.KnnFloatVectorField;
import org.apache.lucene.document.LatLonDocValuesField;
import org.apache.lucene.document.LatLonPoint;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.SortedDocValuesField;
import org.apache.lucene.document.SortedSetDocValuesField;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.VectorSimilarityFunction;
import org.apache.lucene.util.BytesRef;

/** An entry as Lucene keeps it. A change here needs a new {@link #VERSION}. */
final class EntryDocument {

  /** Counts up when documents are laid out anew, so that older indexes are rebuilt. */
  static final int VERSION = 5;

  static final String KEY = "key";
  static final String STUDIO = "studio";
  static final String SETUP = "setup";
  static final String REVISION = "revision";
  static final String CHANGED = "changed";
  static final String LISTED = "listed";
  static final String POINT = "point";
  static final String ARCHIVED = "archived";
  static final String FOR_ALL = "for_all";
  static final String MEANING = "meaning";
  static final String FINGERPRINT = "fingerprint";
  private static final String LIGHT = "light";
  private static final String PICTURE = "picture";
  private static final String REVISION_STORED = "revision_stored";
  private static final long MOST_SECONDS = 1L << 40;

  /** More than any time in milliseconds. */
  private static final long FINISHED_FIRST = 1L << 52;

  private static final String FINISHED = "proven";

  private EntryDocument() {}

  static Term key(String studio, String setup) {
    return new Term(KEY, studio + '\0' + setup);
  }

  static Document of(IndexEntry entry) {
    Document document = new Document();
    document.add(new StringField(KEY, key(entry.studio(), entry.setup()).bytes(), Store.NO));
    document.add(new StringField(STUDIO, entry.studio(), Store.NO));
    document.add(new SortedDocValuesField(STUDIO, new BytesRef(entry.studio())));
    document.add(new StringField(SETUP, entry.setup(), Store.NO));
    document.add(new SortedDocValuesField(SETUP, new BytesRef(entry.setup())));
    document.add(new NumericDocValuesField(REVISION, entry.revision()));
    document.add(new StoredField(REVISION_STORED, entry.revision()));
    document.add(new NumericDocValuesField(CHANGED, milliseconds(entry.changedAt())));
    document.add(new NumericDocValuesField(LISTED, listed(entry)));
    document.add(new BinaryDocValuesField(FINGERPRINT, new BytesRef(Fingerprint.of(entry))));
    addTraits(document, entry.traits());
    entry
        .light()
        .ifPresent(
            light -> document.add(new BinaryDocValuesField(LIGHT, new BytesRef(light.toBytes()))));
    entry
        .picture()
        .ifPresent(
            tones ->
                document.add(new BinaryDocValuesField(PICTURE, new BytesRef(tones.toBytes()))));
    SuggestionTerms.add(document, entry);
    document.add(new StringField(ARCHIVED, Boolean.toString(entry.archived()), Store.NO));
    document.add(new StringField(FOR_ALL, Boolean.toString(entry.forAll()), Store.NO));
    texts(entry)
        .forEach(
            (field, texts) ->
                texts.forEach(
                    text -> {
                      for (int i = 0; i < field.times; i++) {
                        document.add(
                            new org.apache.lucene.document.TextField(
                                TextField.WORDS, text, Store.NO));
                      }
                      // Kept as well: the words of a hit are read again to say why it matched.
                      document.add(new StoredField(field.lucene(), text));
                    }));
    entry
        .meaning()
        .ifPresent(
            meaning ->
                document.add(
                    new KnnFloatVectorField(
                        MEANING, meaning.direction(), VectorSimilarityFunction.DOT_PRODUCT)));
    return document;
  }

  /** The revision of a setup that was read back whole. */
  static int revision(Document setup) {
    return setup.getField(REVISION_STORED).numericValue().intValue();
  }

  /** What remains of a deleted setup: its last revision, without a studio, so no search sees it. */
  static Document gone(String studio, String setup, int revision) {
    Document document = new Document();
    document.add(new StringField(KEY, key(studio, setup).bytes(), Store.NO));
    document.add(new NumericDocValuesField(REVISION, revision));
    return document;
  }

  /** Where it stands in a list without words: what is finished first, then the newest change. */
  private static long listed(IndexEntry entry) {
    long changed = milliseconds(entry.changedAt());
    return entry.state().equals(FINISHED) ? changed + FINISHED_FIRST : changed;
  }

  private static void addTraits(Document document, Traits traits) {
    traits
        .words()
        .forEach(
            (trait, words) -> {
              for (String word : words) {
                document.add(
                    new SortedSetDocValuesField(words(trait), TraitValue.of(word).bytes()));
                document.add(
                    new StringField(words(trait), new BytesRef(Filter.key(word)), Store.NO));
              }
            });
    traits
        .numbers()
        .forEach((trait, number) -> document.add(new DoubleField(number(trait), number, Store.NO)));
    traits
        .point()
        .ifPresent(
            point -> {
              document.add(new LatLonPoint(POINT, point.latitudeDeg(), point.longitudeDeg()));
              document.add(
                  new LatLonDocValuesField(POINT, point.latitudeDeg(), point.longitudeDeg()));
            });
  }

  /** The field of what setups are compared by. */
  static String facts(Question.Facts facts) {
    return switch (facts) {
      case LIGHT -> LIGHT;
      case PICTURE -> PICTURE;
    };
  }

  /** The field of a trait's words. */
  static String words(Trait trait) {
    return "words_" + trait.name('_');
  }

  /** The field of a trait's number. */
  static String number(Trait trait) {
    return "number_" + trait.name('_');
  }

  /** No date that somebody made up may stop the index, so the absurd ones are drawn in. */
  private static long milliseconds(Instant when) {
    long seconds = Math.clamp(when.getEpochSecond(), -MOST_SECONDS, MOST_SECONDS);
    return seconds * 1_000 + when.getNano() / 1_000_000;
  }

  private static Map<TextField, List<String>> texts(IndexEntry entry) {
    Map<TextField, List<String>> texts = new EnumMap<>(TextField.class);
    texts.put(TextField.TITLE, List.of(entry.title()));
    texts.put(TextField.MOOD, entry.moods());
    texts.put(TextField.INTENT, List.of(entry.intent()));
    texts.put(TextField.GENRE, entry.genre().stream().toList());
    texts.put(
        TextField.PLACE,
        Stream.concat(entry.placeName().stream(), entry.placeKind().stream()).toList());
    texts.put(TextField.WRITTEN, entry.written());
    texts.put(TextField.GEAR, entry.gear());
    texts.put(TextField.ROLE, entry.roles());
    return texts;
  }
}
