package dawngauge.feed;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.Optional;
import okio.ByteString;

/** Foreign JSON, within limits. */
final class JsonBody {
  private static final int DEEPEST = 64;
  private static final int MOST_TOKENS = 500_000;
  private static final int LONGEST_TEXT = 100_000;
  private static final int LONGEST_NUMBER = 100;

  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(DEEPEST)
                          .maxTokenCount(MOST_TOKENS)
                          .maxStringLength(LONGEST_TEXT)
                          .maxNameLength(LONGEST_TEXT)
                          .maxNumberLength(LONGEST_NUMBER)
                          .build())
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private JsonBody() {}

  /** The tree, or nothing if the bytes are no JSON or beyond the limits. */
  static Optional<JsonNode> tree(ByteString body) {
    try {
      JsonNode tree = MAPPER.readTree(body.toByteArray());
      return tree.isObject() ? Optional.of(tree) : Optional.empty();
    } catch (IOException wrong) {
      return Optional.empty();
    }
  }
}
