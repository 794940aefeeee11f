package dawngauge.exchange;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The characters of an XML file, by its byte-order mark, else by what its first bytes must be (XML
 * 1.0, appendix F), else by the encoding that it declares, else as UTF-8.
 *
 * @param refused why they cannot be read; empty where they can
 * @param text the characters, without a byte-order mark
 */
record XmlText(String refused, String text) {

  /** A declaration stands at the very beginning and is short; in bytes, ours. */
  private static final int DECLARATION = 400;

  private static final Pattern ENCODING =
      Pattern.compile("^<\\?xml[^>]*?\\sencoding\\s*=\\s*[\"']([^\"'>]*)[\"']");

  private static final String BEGINNING = "<?xml";

  private static final String WAY_OUT = "; save it as UTF-8";

  static XmlText of(byte[] bytes) {
    int first = first(bytes);
    if (first == 0x0000FEFF) {
      return decoded(bytes, 4, Charset.forName("UTF-32BE"));
    } else if (first == 0xFFFE0000 && bytes.length >= 4) {
      return decoded(bytes, 4, Charset.forName("UTF-32LE"));
    } else if (first >>> 8 == 0xEFBBBF) {
      return decoded(bytes, 3, StandardCharsets.UTF_8);
    } else if (first >>> 16 == 0xFEFF) {
      return decoded(bytes, 2, StandardCharsets.UTF_16BE);
    } else if (first >>> 16 == 0xFFFE) {
      return decoded(bytes, 2, StandardCharsets.UTF_16LE);
    } else if (first >>> 16 == '<') {
      return decoded(bytes, 0, StandardCharsets.UTF_16BE);
    } else if (first >>> 16 == '<' << 8) {
      return decoded(bytes, 0, StandardCharsets.UTF_16LE);
    }
    String beginning =
        new String(bytes, 0, Math.min(bytes.length, DECLARATION), StandardCharsets.ISO_8859_1);
    Matcher declared = ENCODING.matcher(beginning);
    if (!declared.find()) {
      return decoded(bytes, 0, StandardCharsets.UTF_8);
    }
    String name = CsvRows.shortened(declared.group(1));
    try {
      Charset charset = Charset.forName(name);
      String read = new String(BEGINNING.getBytes(StandardCharsets.US_ASCII), charset);
      return read.equals(BEGINNING)
          ? decoded(bytes, 0, charset)
          : refusing("it says that it is " + name + ", but its bytes are not" + WAY_OUT);
    } catch (IllegalArgumentException unknown) {
      return refusing("its encoding \"" + name + "\" is not known" + WAY_OUT);
    }
  }

  /** The first four bytes, zeros beyond the end. */
  private static int first(byte[] bytes) {
    int first = 0;
    for (int i = 0; i < 4; i++) {
      first = first << 8 | (i < bytes.length ? bytes[i] & 0xFF : 0);
    }
    return first;
  }

  private static XmlText decoded(byte[] bytes, int from, Charset charset) {
    CharsetDecoder decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes, from, bytes.length - from);
    CharBuffer out =
        CharBuffer.allocate((int) (in.remaining() * (double) decoder.maxCharsPerByte()) + 1);
    CoderResult result = decoder.decode(in, out, true);
    if (!result.isError()) {
      result = decoder.flush(out);
    }
    out.flip();
    if (!result.isUnderflow()) {
      long line = 1 + out.chars().filter(c -> c == '\n').count();
      return refusing(
          "line "
              + line
              + " holds bytes that are no "
              + charset.name()
              + ", as which it is read"
              + WAY_OUT);
    }
    return new XmlText("", out.toString());
  }

  private static XmlText refusing(String why) {
    return new XmlText(why, "");
  }
}
