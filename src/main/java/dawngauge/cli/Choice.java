package dawngauge.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads one of a few words, in small or capital letters.
 *
 * @param <E> what the words stand for
 */
final class Choice<E extends Enum<E>> implements ITypeConverter<E> {

  private final Class<E> kind;

  Choice(Class<E> kind) {
    this.kind = kind;
  }

  @Override
  public E convert(String typed) {
    for (E constant : kind.getEnumConstants()) {
      if (constant.name().equalsIgnoreCase(typed)) {
        return constant;
      }
    }
    throw new TypeConversionException(
        "\""
            + typed
            + "\" is none of "
            + Arrays.stream(kind.getEnumConstants())
                .map(constant -> constant.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", ")));
  }
}
