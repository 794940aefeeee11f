package dawngauge.feed;

import okhttp3.HttpUrl;

/**
 * One question to a service.
 *
 * @param service its name in words
 * @param address where it is at home; no other host is asked
 * @param url what is asked
 * @param accept kinds of answer that are understood
 * @param attempts how often it may be asked
 * @param anew whether a kept answer will not do
 */
record Question(
    String service,
    ServiceAddress address,
    HttpUrl url,
    String accept,
    int attempts,
    boolean anew) {}
