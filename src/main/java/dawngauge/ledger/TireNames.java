package dawngauge.ledger;

import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.trip.Rig;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Short forms of the tires of a rig; their words stand beside them where a page first has them. */
public final class TireNames {

  /** Of no rig. */
  public static final TireNames NONE = new TireNames(Map.of(), "");

  private final Map<String, String> words;

  private final String key;

  /** Short forms with a blank between them. */
  private final Pattern run;

  private TireNames(Map<String, String> words, String key) {
    this.words = words;
    this.key = key;
    String any =
        words.keySet().stream().map(Pattern::quote).collect(Collectors.joining("|", "(?:", ")"));
    this.run = Pattern.compile("(?<![\\p{L}\\p{N}])" + any + "(?: " + any + ")*(?![\\p{L}\\p{N}])");
  }

  /** Those of a rig. */
  public static TireNames of(Rig rig) {
    Map<String, String> words = new LinkedHashMap<>();
    Set<String> parts = new LinkedHashSet<>();
    Set<String> slots = new LinkedHashSet<>();
    for (WheelPosition position : rig.positions()) {
      String name = rig.shortForm(position);
      words.put(name, position.words());
      String letters = position.slot().letters();
      parts.add(
          name.substring(0, name.length() - letters.length()) + " " + position.axle().words());
      slots.add(letters + " " + position.slot().words());
    }
    parts.addAll(slots);
    return words.isEmpty() ? NONE : new TireNames(words, String.join(", ", parts));
  }

  /** What the parts of a short form stand for: "t1 trailer axle 1, t2 …, l left, r right". */
  public String key() {
    return key;
  }

  /** All short forms that are known. */
  public Set<String> known() {
    return words.keySet();
  }

  /** "pickup axle 2 left inner"; empty where not known. */
  public String words(String name) {
    return words.getOrDefault(name, "");
  }

  /** "pickup axle 2 left inner (p2li)" of each that was not told before; adds it to those told. */
  public List<String> untold(Collection<String> names, Set<String> told) {
    List<String> now = new ArrayList<>();
    for (String name : names) {
      if (words.containsKey(name) && told.add(name)) {
        now.add(words.get(name) + " (" + name + ")");
      }
    }
    return now;
  }

  /** The page with each tire in words where its short form first stands in a sentence. */
  public Page spelled(Page page) {
    return new Page(page.title(), blocks(page.blocks(), new HashSet<>()));
  }

  private List<Block> blocks(List<Block> blocks, Set<String> told) {
    List<Block> spelled = new ArrayList<>();
    for (Block block : blocks) {
      if (block instanceof Block.Heading heading) {
        spelled.add(new Block.Heading(text(heading.text(), told), heading.level()));
      } else if (block instanceof Block.Card card) {
        spelled.add(
            new Block.Card(
                text(card.title(), told),
                lines(card.todo(), told),
                lines(card.watch(), told),
                lines(card.why(), new HashSet<>(told)))); // may be folded
      } else if (block instanceof Block.Note note) {
        spelled.add(new Block.Note(note.weight(), text(note.text(), told)));
      } else if (block instanceof Block.Bullets bullets) {
        spelled.add(new Block.Bullets(lines(bullets.lines(), told)));
      } else if (block instanceof Block.Why why) {
        Set<String> folded = new HashSet<>(told);
        spelled.add(new Block.Why(text(why.title(), folded), blocks(why.blocks(), folded)));
      } else {
        if (block instanceof Block.Table table) {
          for (List<String> row : table.rows()) {
            row.stream()
                .filter(cell -> words.containsKey(cell) && row.contains(words(cell)))
                .forEach(told::add);
          }
        }
        spelled.add(block);
      }
    }
    return spelled;
  }

  private List<String> lines(List<String> lines, Set<String> told) {
    return lines.stream().map(line -> text(line, told)).toList();
  }

  /** A sentence with each tire in words that was not told before; adds it to those told. */
  public String text(String text, Set<String> told) {
    if (words.isEmpty()) {
      return text;
    }
    return run.matcher(text)
        .replaceAll(
            found -> {
              List<String> names = List.of(found.group().split(" ", -1));
              List<String> full = new ArrayList<>();
              for (String name : names) {
                List<String> first = untold(List.of(name), told);
                full.add(first.isEmpty() ? name : first.get(0));
              }
              String said = String.join(full.equals(names) ? " " : ", ", full);
              boolean begins = found.start() == 0;
              return Matcher.quoteReplacement(begins ? Wording.begun(said) : said);
            });
  }
}
