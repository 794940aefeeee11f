package dawngauge.ui.map;

import dawngauge.planner.TileSource;
import dawngauge.ui.common.Tasks;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.swing.SwingUtilities;

/**
 * Pictures of an online map: those that are looked at are asked for, two at a time, and kept in
 * memory while there is room. Touched on Swing's thread alone.
 */
final class TileStore {

  /** Pictures in memory: about 100 MB where they have 256 pixels, 400 MB where 512. */
  private static final int MOST = 400;

  private static final int PARALLEL = 2;

  /** Pictures that are larger are not shown; squares have 256 or 512 pixels. */
  private static final int LARGEST = 1024;

  private record Key(int level, int x, int y) {}

  private final TileSource source;
  private final Runnable arrived;
  private final Set<Key> absent = new HashSet<>();
  private final Set<Key> coming = new HashSet<>();
  private List<Key> wanted = List.of();
  private final Map<Key, BufferedImage> pictures =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, BufferedImage> eldest) {
          return size() > MOST;
        }
      };

  /**
   * A store.
   *
   * @param arrived told when a picture has come
   */
  TileStore(TileSource source, Runnable arrived) {
    this.source = source;
    this.arrived = arrived;
  }

  String credit() {
    return source.credit();
  }

  /**
   * Paints what is there and asks for the rest.
   *
   * @param scale pixels of the screen to one of the view, 2 on a fine screen
   */
  void paint(Graphics2D g, MapFrame frame, double scale) {
    int level =
        (int) Math.rint(Math.max(0, Math.min(source.finest(), frame.level() + log2(scale))));
    int across = 1 << level;
    double size = frame.world() / across;
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    List<Key> missing = new ArrayList<>();
    int top = Math.max(0, (int) Math.floor(frame.top() / size));
    int bottom = Math.min(across - 1, (int) Math.floor((frame.top() + frame.height()) / size));
    int right = (int) Math.floor((frame.left() + frame.width()) / size);
    for (int column = (int) Math.floor(frame.left() / size); column <= right; column++) {
      for (int row = top; row <= bottom; row++) {
        Key key = new Key(level, Math.floorMod(column, across), row);
        paint(g, key, column * size - frame.left(), row * size - frame.top(), size);
        if (!pictures.containsKey(key) && !absent.contains(key)) {
          missing.add(key);
        }
      }
    }
    wanted = missing;
    load();
  }

  private static double log2(double of) {
    return Math.log(of) / Math.log(2);
  }

  /** Paints a square, or while it is not there the part of a coarser one. */
  private void paint(Graphics2D g, Key key, double x, double y, double size) {
    int left = (int) Math.rint(x);
    int top = (int) Math.rint(y);
    int right = (int) Math.rint(x + size);
    int bottom = (int) Math.rint(y + size);
    for (int up = 0; up <= key.level() && up < 5; up++) {
      BufferedImage picture = pictures.get(new Key(key.level() - up, key.x() >> up, key.y() >> up));
      if (picture != null) {
        int parts = 1 << up;
        int part = picture.getWidth() / parts;
        int fromX = (key.x() % parts) * part;
        int fromY = (key.y() % parts) * part;
        g.drawImage(
            picture, left, top, right, bottom, fromX, fromY, fromX + part, fromY + part, null);
        return;
      }
    }
  }

  private void load() {
    for (Key key : wanted) {
      if (coming.size() >= PARALLEL) {
        return;
      }
      if (coming.add(key)) {
        Tasks.work(
            job -> read(key),
            picture -> SwingUtilities.invokeLater(() -> take(key, picture)),
            wrong -> SwingUtilities.invokeLater(() -> take(key, Optional.empty())));
      }
    }
  }

  private Optional<BufferedImage> read(Key key) {
    Optional<byte[]> bytes = source.tile(key.level(), key.x(), key.y());
    if (bytes.isEmpty()) {
      return Optional.empty();
    }
    try {
      BufferedImage picture = ImageIO.read(new ByteArrayInputStream(bytes.get()));
      return Optional.ofNullable(picture)
          .filter(read -> read.getWidth() <= LARGEST && read.getWidth() == read.getHeight());
    } catch (IOException noPicture) {
      return Optional.empty();
    }
  }

  private void take(Key key, Optional<BufferedImage> picture) {
    coming.remove(key);
    picture.ifPresentOrElse(read -> pictures.put(key, read), () -> absent.add(key));
    wanted = wanted.stream().filter(other -> !other.equals(key)).toList();
    load();
    arrived.run();
  }
}
