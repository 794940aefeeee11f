package dawngauge.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Standard output as UTF-8, which knows whether it cannot be written because its reader has gone,
 * as {@code head} goes when it has read enough; that is no fault to speak of.
 */
public final class StandardOutput extends PrintWriter {

  private final Watched stream;

  /** Writes straight to a stream. */
  public StandardOutput(OutputStream stream) {
    this(new Watched(stream));
  }

  private StandardOutput(Watched stream) {
    super(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    this.stream = stream;
  }

  /** Whether its reader has gone. */
  boolean isReaderGone() {
    return stream.readerGone;
  }

  /** Remembers how writing failed, which a PrintWriter does not. */
  private static final class Watched extends FilterOutputStream {
    private volatile boolean readerGone;

    Watched(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      try {
        out.write(bytes, from, length);
      } catch (IOException failed) {
        String why = String.valueOf(failed.getMessage()).toLowerCase(Locale.ROOT);
        readerGone |= why.contains("broken pipe") || why.contains("pipe is being closed");
        throw failed;
      }
    }
  }
}
