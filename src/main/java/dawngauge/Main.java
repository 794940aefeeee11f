package dawngauge;

/** Starts Dawngauge. */
public final class Main {
  private Main() {}

  /** Runs one command and ends with its exit code. */
  public static void main(String[] args) {
    System.out.println("Dawngauge");
  }
}
