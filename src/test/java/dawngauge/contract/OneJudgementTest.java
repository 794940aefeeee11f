package dawngauge.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every page says the same of one tire at one stop. */
class OneJudgementTest {

  /** What a page does not speak of; it speaks of all else. */
  private static final Map<String, Set<Field>> SILENT =
      Map.ofEntries(
          Map.entry("forecast", EnumSet.noneOf(Field.class)),
          Map.entry("forecast table", EnumSet.of(Field.RAN_LOW)),
          Map.entry("timetable", EnumSet.noneOf(Field.class)),
          Map.entry("cards", EnumSet.noneOf(Field.class)),
          Map.entry("sheet", EnumSet.noneOf(Field.class)),
          Map.entry("reminders", EnumSet.of(Field.LOAD_BASIS)),
          Map.entry("explanation", EnumSet.of(Field.SETS, Field.SET_COLD, Field.SET_ON_ARRIVAL)),
          Map.entry(
              "figure",
              EnumSet.of(Field.HOLD, Field.FLOOR, Field.AIM, Field.LOAD_BASIS, Field.SETS)),
          Map.entry("live check", EnumSet.complementOf(EnumSet.of(Field.RAN_LOW, Field.HOLD))),
          Map.entry(
              "fitness",
              EnumSet.complementOf(EnumSet.of(Field.RAN_LOW, Field.HOLD, Field.LOAD_BASIS))),
          Map.entry("review", EnumSet.complementOf(EnumSet.of(Field.RAN_LOW))),
          // Its figures are those of the fewest stops, not of the stop that is looked at.
          Map.entry("plan", EnumSet.complementOf(EnumSet.of(Field.RAN_LOW))));

  /** Pages that speak of every tire at every stop. */
  private static final List<String> OF_ALL =
      List.of("forecast", "forecast table", "timetable", "cards");

  private static List<Comparison> comparisons = List.of();

  @BeforeAll
  static void listen(@TempDir Path folder) {
    Set<Cell> some = Grid.some().stream().map(Grid.Haul::cell).collect(Collectors.toSet());
    comparisons =
        Grid.all().stream()
            .map(haul -> Comparison.of(haul, voices(folder, some.contains(haul.cell()))))
            .toList();
  }

  /** The forecast first: what it speaks of, others are held against. */
  private static List<Voice> voices(Path folder, boolean all) {
    List<Voice> voices =
        new ArrayList<>(
            List.of(
                new ForecastVoice(), new CsvVoice(), new TextVoice(true), new TextVoice(false)));
    if (all) {
      voices.add(new SheetVoice(folder));
      voices.add(new ExplainVoice());
    }
    voices.addAll(
        List.of(
            new RemindersVoice(),
            new FigureVoice(),
            new LiveVoice(),
            new FitnessVoice(),
            new ReviewVoice(),
            new PlanVoice()));
    return voices;
  }

  @Test
  void everyPageSaysTheSame() {
    List<Disagreement> found = new ArrayList<>();
    for (Comparison comparison : comparisons) {
      found.addAll(comparison.disagreements());
    }
    assertThat(found).isEmpty();
  }

  @Test
  void everyPageSpeaksOfAllButWhatIsListed() {
    SILENT.forEach(
        (voice, silent) -> {
          Set<Field> spoken = EnumSet.noneOf(Field.class);
          sayings(voice).forEach(saying -> spoken.addAll(saying.parts().keySet()));
          assertThat(spoken)
              .as(voice)
              .containsExactlyInAnyOrderElementsOf(EnumSet.complementOf(EnumSet.copyOf(silent)));
        });
  }

  /** A page whose yes is never heard would agree with every no. */
  @Test
  void everyPageSaysBothYesAndNo() {
    SILENT.forEach(
        (voice, silent) -> {
          for (Field field : List.of(Field.RAN_LOW, Field.HOLD, Field.SETS)) {
            if (!silent.contains(field)) {
              Set<Object> answers = new HashSet<>();
              sayings(voice).stream()
                  .filter(saying -> saying.says(field))
                  .forEach(saying -> answers.add(saying.yes(field)));
              assertThat(answers).as(voice + " " + field).containsExactlyInAnyOrder(true, false);
            }
          }
        });
  }

  private static List<Saying> sayings(String voice) {
    List<Saying> all = new ArrayList<>();
    for (Comparison comparison : comparisons) {
      all.addAll(comparison.sayings().getOrDefault(voice, Map.of()).values());
    }
    return all;
  }

  @Test
  void everyTireIsSpokenOfAtEveryStop() {
    List<Grid.Haul> hauls = Grid.all();
    assertThat(comparisons).hasSameSizeAs(hauls);
    for (int i = 0; i < hauls.size(); i++) {
      Set<Place> places = places(hauls.get(i));
      for (String voice : OF_ALL) {
        assertThat(comparisons.get(i).sayings().getOrDefault(voice, Map.of()).keySet())
            .as(voice + " of " + hauls.get(i).cell())
            .containsAll(places);
      }
    }
  }

  private static Set<Place> places(Grid.Haul haul) {
    Set<Place> places = new HashSet<>();
    haul.trip()
        .rig()
        .positions()
        .forEach(
            position -> {
              for (int stop = 0; stop < haul.trip().route().stops().size(); stop++) {
                places.add(new Place(haul.trip().rig().shortForm(position), stop));
              }
            });
    return places;
  }

  @Test
  void everyTwoValuesOccurTogether() throws ReflectiveOperationException {
    List<Grid.Haul> some = Grid.some();
    RecordComponent[] parts = Cell.class.getRecordComponents();
    for (RecordComponent one : parts) {
      for (RecordComponent other : parts) {
        if (one != other) {
          Set<List<Object>> met = new HashSet<>();
          for (Grid.Haul haul : some) {
            met.add(
                List.of(
                    one.getAccessor().invoke(haul.cell()),
                    other.getAccessor().invoke(haul.cell())));
          }
          assertThat(met)
              .as(one.getName() + " and " + other.getName())
              .hasSize(
                  one.getType().getEnumConstants().length
                      * other.getType().getEnumConstants().length);
        }
      }
    }
  }

  /** Proof that a difference is found: a second forecast that says no where the first says yes. */
  @Test
  void aDifferenceIsFound() {
    Grid.Haul haul = Grid.all().get(0);
    Place place = new Place("t1l", 0);
    Comparison comparison =
        Comparison.of(
            haul,
            List.of(
                fixed("one", place, Saying.NOTHING.with(Field.HOLD, true)),
                fixed("other", place, Saying.NOTHING.with(Field.HOLD, false)),
                fixed("third", place, Saying.NOTHING.with(Field.FLOOR, new Figure(60, 0.5))),
                fixed("fourth", place, Saying.NOTHING.with(Field.FLOOR, new Figure(60.6, 0.5))),
                fixed("fifth", place, Saying.NOTHING.with(Field.FLOOR, new Figure(61.1, 0.5)))));
    assertThat(comparison.compared()).isEqualTo(3);
    assertThat(comparison.disagreements())
        .extracting(Disagreement::one, Disagreement::other, Disagreement::kind)
        .containsExactly(
            tuple("one", "other", Disagreement.Kind.SAYS_NO),
            tuple("third", "fifth", Disagreement.Kind.HIGHER));
  }

  private static Voice fixed(String name, Place place, Saying saying) {
    return new Voice() {
      @Override
      public String name() {
        return name;
      }

      @Override
      public Map<Place, Saying> of(Grid.Haul haul) {
        return Map.of(place, saying);
      }
    };
  }
}
