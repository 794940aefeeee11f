package dawngauge.feed;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.util.regex.Pattern;

/**
 * Somebody was told what is sent where, agreed, and gave a contact. Without one of these nothing in
 * this package can be built, so nothing leaves.
 *
 * @param contact e-mail or web address of whoever uses the program; each service sees it
 */
public record Consent(String contact) {
  private static final int LONGEST = 200;
  private static final String HOST = "[A-Za-z0-9-]+(?:\\.[A-Za-z0-9-]+)+";
  private static final Pattern MAIL = Pattern.compile("[\\w.!#$%&'*+/=?^{|}~-]+@" + HOST);
  private static final Pattern SITE =
      Pattern.compile("(?:https?://)?" + HOST + "(?:/[\\w.~%/?#=&+-]*)?");

  /** Refuses what is no contact. */
  public Consent {
    if (!isContact(contact)) {
      throw new IllegalArgumentException("\"" + contact + "\" is no contact");
    }
  }

  /** The consent of somebody who agreed and typed a contact. */
  public static Outcome<Consent> parse(String contact) {
    String typed = contact.strip();
    return isContact(typed)
        ? Outcome.of(new Consent(typed))
        : Outcome.failed(Problem.of(ProblemCode.NOT_A_CONTACT, "", PrintableText.of(typed)));
  }

  private static boolean isContact(String text) {
    return text.length() <= LONGEST
        && (MAIL.matcher(text).matches() || SITE.matcher(text).matches());
  }
}
