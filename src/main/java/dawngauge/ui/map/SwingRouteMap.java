package dawngauge.ui.map;

import dawngauge.geo.Coordinate;
import dawngauge.planner.TileSource;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.embed.swing.SwingNode;
import javafx.scene.Node;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.jxmapviewer.JXMapViewer;
import org.jxmapviewer.input.ZoomMouseWheelListenerCursor;
import org.jxmapviewer.viewer.GeoPosition;

/** The map, painted by Swing within the window. */
final class SwingRouteMap implements RouteMap, MapMouse.Listener {

  /** Seen where no stop is on the map: North America. */
  private static final List<Coordinate> AT_FIRST =
      List.of(new Coordinate(52, -125), new Coordinate(22, -68));

  /** Pixels that stay free around the stops. */
  private static final double MARGIN = 42;

  /** One stop alone is shown no nearer than this many doublings. */
  private static final double NEAR_ENOUGH = 9;

  private final SwingNode node = new SwingNode();
  private final MapHands hands;

  // Of Swing's thread alone.
  private @Nullable JXMapViewer viewer;
  private @Nullable MapPainter painter;
  private MapPicture picture;
  private @Nullable MapStop dragged;
  private @Nullable TileStore tiles;
  private boolean adding;
  private boolean fitWanted = true;

  /** Handed from Swing's thread to the window's. */
  private volatile Optional<Map<Integer, javafx.geometry.Point2D>> painted = Optional.empty();

  SwingRouteMap(MapHands hands, MapPicture first) {
    this.hands = hands;
    this.picture = first;
    node.setFocusTraversable(false);
    SwingUtilities.invokeLater(this::build);
  }

  private void build() {
    JXMapViewer made = new MapViewer();
    MapMouse mouse = new MapMouse(made, this);
    made.addMouseListener(mouse);
    made.addMouseMotionListener(mouse);
    made.addMouseWheelListener(new ZoomMouseWheelListenerCursor(made));
    made.setOverlayPainter((g, map, width, height) -> paint(g, map));
    painter = new MapPainter();
    viewer = made;
    node.setContent(made);
  }

  private void paint(Graphics2D g, JXMapViewer map) {
    MapPainter known = painter;
    if (known == null || map.getWidth() < 1 || map.getHeight() < 1) {
      return;
    }
    if (fitWanted) {
      fitWanted = false;
      fit(map); // repaints
      return;
    }
    MapFrame frame = MapFrame.of(map);
    Graphics2D own = (Graphics2D) g.create();
    MapPicture shown = shown();
    known.paint(own, frame, shown, tiles);
    own.dispose();
    Map<Integer, javafx.geometry.Point2D> points = new HashMap<>();
    for (MapStop stop : shown.stops()) {
      Point2D.Double at = frame.of(stop.at());
      points.put(stop.index(), new javafx.geometry.Point2D(at.x, at.y));
    }
    painted = Optional.of(Map.copyOf(points));
  }

  /** The picture with the stop that is dragged where the mouse is. */
  private MapPicture shown() {
    MapStop away = dragged;
    return away == null
        ? picture
        : new MapPicture(
            picture.stops().stream()
                .map(stop -> stop.index() == away.index() ? away : stop)
                .toList(),
            away.index(),
            picture.unit(),
            picture.dark());
  }

  private void fit(JXMapViewer map) {
    List<Coordinate> places = picture.stops().stream().map(MapStop::at).toList();
    boolean none = places.isEmpty();
    see(map, none ? AT_FIRST : places, none ? 0 : MARGIN);
  }

  /** Comes as near as lets all places be seen. */
  private static void see(JXMapViewer map, List<Coordinate> places, double margin) {
    Coordinate first = places.get(0);
    for (int zoom = 0; zoom <= MapScales.STEPS; zoom++) {
      map.setZoom(zoom);
      map.setCenterPosition(new GeoPosition(first.latitude(), first.longitude()));
      MapFrame frame = MapFrame.of(map);
      double west = Double.POSITIVE_INFINITY;
      double east = Double.NEGATIVE_INFINITY;
      double north = Double.POSITIVE_INFINITY;
      double south = Double.NEGATIVE_INFINITY;
      for (Coordinate place : places) {
        Point2D.Double at = frame.of(place);
        west = Math.min(west, at.x);
        east = Math.max(east, at.x);
        north = Math.min(north, at.y);
        south = Math.max(south, at.y);
      }
      boolean seen =
          east - west <= frame.width() - 2 * margin && south - north <= frame.height() - 2 * margin;
      if (frame.level() <= NEAR_ENOUGH && seen) {
        centered(map, frame.at((west + east) / 2, (north + south) / 2));
        return;
      }
    }
  }

  private static void centered(JXMapViewer map, Coordinate at) {
    map.setCenterPosition(new GeoPosition(at.latitude(), at.longitude()));
  }

  /** Does something with the map on Swing's thread, once it is there. */
  private void later(Consumer<JXMapViewer> work) {
    SwingUtilities.invokeLater(
        () -> {
          JXMapViewer map = viewer;
          if (map != null) {
            work.accept(map);
            map.repaint();
          }
        });
  }

  @Override
  public Node node() {
    return node;
  }

  @Override
  public void show(MapPicture next) {
    later(
        map -> {
          // The first stop that is placed would lie anywhere.
          boolean first = picture.stops().isEmpty() && !next.stops().isEmpty() && !adding;
          picture = next;
          dragged = null;
          if (first) {
            fit(map);
          }
        });
  }

  @Override
  public void fit() {
    later(this::fit);
  }

  @Override
  public void center() {
    later(
        map ->
            picture.stops().stream()
                .filter(stop -> stop.index() == picture.chosen())
                .forEach(stop -> centered(map, stop.at())));
  }

  @Override
  public void zoom(int steps) {
    later(map -> map.setZoom(map.getZoom() - steps));
  }

  @Override
  public void pan(double right, double down) {
    later(
        map -> {
          Point2D middle = map.getCenter();
          map.setCenter(
              new Point2D.Double(
                  middle.getX() + right * map.getWidth(), middle.getY() + down * map.getHeight()));
        });
  }

  @Override
  public void online(Optional<TileSource> source) {
    later(map -> tiles = source.map(from -> new TileStore(from, map::repaint)).orElse(null));
  }

  @Override
  public void adding(boolean on) {
    later(map -> adding = on);
  }

  @Override
  public Optional<Map<Integer, javafx.geometry.Point2D>> painted() {
    return painted;
  }

  @Override
  public void close() {
    SwingUtilities.invokeLater(
        () -> {
          viewer = null;
          painter = null;
        });
    node.setContent(null);
  }

  @Override
  public MapPicture picture() {
    return picture;
  }

  @Override
  public void dragged(int stop, @Nullable Coordinate to) {
    dragged =
        to == null
            ? null
            : picture.stops().stream()
                .filter(candidate -> candidate.index() == stop)
                .map(old -> new MapStop(stop, old.name(), to, old.mark()))
                .findFirst()
                .orElse(null);
    JXMapViewer map = viewer;
    if (map != null) {
      map.repaint();
    }
  }

  @Override
  public void dropped(int stop, Coordinate at) {
    Platform.runLater(() -> hands.moveOnMap(stop, at));
  }

  @Override
  public void pressed(int stop) {
    Platform.runLater(() -> hands.chooseOnMap(stop));
  }

  @Override
  public void clicked(Coordinate at) {
    if (adding) {
      Platform.runLater(() -> hands.addOnMap(at));
    }
  }
}
