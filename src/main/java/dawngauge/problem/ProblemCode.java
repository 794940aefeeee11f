package dawngauge.problem;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The catalogue of everything that can be wrong or missing. Each text names the value, the limit
 * and the way out; {0}, {1} … are filled from the problem.
 */
public enum ProblemCode {
  // Quantities
  NOT_A_QUANTITY(
      Severity.ERROR, "\"{0}\" is not a {1}; write a number and a unit, such as \"{2}\""),
  UNKNOWN_UNIT(Severity.ERROR, "\"{0}\" has no unit known for a {1}; use one of {2}"),
  OUT_OF_RANGE(Severity.ERROR, "{0} is outside {1} to {2}; check the figure and its unit"),

  // Itinerary
  NO_STOPS(
      Severity.ERROR, "the route has no stops; give at least the start and one stop to forecast"),
  NO_DRIVING_TIME(
      Severity.GAP,
      "the leg to {0} has neither a driving time nor distance and average speed: times from there on"
          + " are unknown; give one of them, or the arrival"),
  ARRIVES_BEFORE_LEAVING(
      Severity.GAP,
      "arrives {0}, not after leaving {1} at {2}: times from here on are unknown; correct the typed"
          + " times"),
  LEAVES_BEFORE_ARRIVING(
      Severity.GAP,
      "leaves {0}, before arriving at {1}: times from here on are unknown; correct the typed"
          + " times"),

  TYPED_TIME_CLASHES(
      Severity.GAP,
      "the typed {0}, {1}, cannot be kept by the actual times: {2} is expected; change it, or what"
          + " hangs on it"),

  TRIP_TOO_LONG(
      Severity.GAP,
      "leaves {0}, more than {1} days after the start: times from here on are not used; check year,"
          + " speed and stay"),

  NO_FORECAST(Severity.GAP, "{0} Nothing is forecast: the figures of this trip are not known now"),

  // Air
  NO_AMBIENT(
      Severity.GAP,
      "no air temperature: nothing is forecast here; give a temperature, hours, or the day's low and"
          + " high"),
  NO_PLACE_FOR_WEATHER(
      Severity.GAP,
      "no air temperature can be asked for: it needs the stop's coordinates and elevation; choose the"
          + " place from the list, or type them"),
  WEATHER_STOPPED(
      Severity.NOTE,
      "stopped after {0} of {1} places; what was answered is kept, ask again for the rest"),
  PLACE_NOT_TAKEN(
      Severity.ERROR,
      "several places, or none, are called \"{0}\"; take one from the list while typing (Down, Enter)"),
  NO_TYPICAL_HERE(
      Severity.GAP,
      "typical temperatures are only known in the United States, in Mexico, in the west and south of"
          + " Canada; type the day's low and high"),
  NO_PLACE_FOR_CURVE(
      Severity.GAP,
      "low and high need sunrise and sunset, so the stop's coordinates and time zone; give them, or"
          + " type temperatures by the hour"),
  NO_SUNRISE(
      Severity.GAP,
      "the sun does not rise and set on {0} here, so low and high cannot be spread over the day; type"
          + " temperatures by the hour"),
  NO_ELEVATION(
      Severity.GAP, "no elevation: nothing is forecast here; give the elevation of the ground"),
  ELEVATION_DOUBTED(
      Severity.NOTE,
      "elevation {0}, while the ground there is at about {1}, give or take {2}; pressures are forecast"
          + " for what is typed: correct it, or the coordinates"),

  // Editing in the window
  NOT_TAKEN_YET(Severity.NOTE, "\"{0}\" is not taken yet; Enter takes it, Escape drops it"),
  ARRIVES_SOONER_THAN_DRIVEN(
      Severity.NOTE,
      "{0} counts, but leaving at {1} and driving as typed the rig is here at {2}: it would have to"
          + " average {3}; correct this time, the departure or the leg"),
  TIME_COMES_TWICE(
      Severity.NOTE,
      "the clocks of {0} show this twice that day; {1} is taken; for the other one write {2}"),
  TYPED_BY_OTHER_CLOCKS(
      Severity.NOTE,
      "typed by the clocks of {0}; here it is {1}; type it again to have it by the clocks here"),
  NO_ZONE_FOR_TIME(
      Severity.NOTE,
      "no time zone is known yet, so it counts as UTC; once the place or the zone is given it is that"
          + " of the clocks there"),
  HOUR_TAKEN(
      Severity.ERROR,
      "there is a temperature at {0} already; change that row, or give another time"),
  HOUR_INCOMPLETE(Severity.NOTE, "a temperature by the hour needs its time, too; give the {0}"),
  NOTHING_FOR_ALL(
      Severity.NOTE,
      "a figure typed here is set at all of them; to have none, clear it at each of them"),
  FORECAST_NOT_TYPED(
      Severity.NOTE,
      "this column is forecast, not typed; type what a gauge shows on the page Readings, the"
          + " morning's cold readings on the page Rig"),
  PASTED_BEYOND(
      Severity.ERROR,
      "{0} rows and {1} columns do not fit from here, where {2} stops and {3} of the columns time,"
          + " stop, air, hose are; begin further up or left, or add stops first"),
  NO_DAY_FOR_FIGURES(
      Severity.NOTE,
      "low and high belong to a day, and when the rig is here is not known; give the departure and"
          + " the legs before, or one steady temperature"),
  PROFILE_WITHOUT_LENGTH(
      Severity.ERROR,
      "the leg has no distance yet, so no point can be placed along it; give its distance first"),
  PROFILE_POINT_TAKEN(
      Severity.ERROR,
      "there is a point {0} from the start of the leg already; change that one, or give another"
          + " distance"),
  PROFILE_POINT_INCOMPLETE(
      Severity.NOTE,
      "a point along the leg needs its distance from the start of the leg and its elevation; give"
          + " the {0}"),
  TOP_OF_LEG_UNKNOWN(
      Severity.NOTE,
      "highest point of this leg not known; where it crosses a pass, give the pass below"),
  PLACE_NOT_KNOWN(
      Severity.ERROR,
      "no place \"{0}\" is known; check its spelling and state, name the nearest town, or write it as"
          + " \"{1}\""),
  PLACE_NOT_SURE(
      Severity.NOTE,
      "\"{0}\" may be any of {1} places; the nearest large one is taken: choose another, or write its"
          + " state behind it"),
  NO_WORD_OF_A_STAY(
      Severity.ERROR,
      "\"{0}\" says nothing of a stay; behind @ stand, parted by commas, such as {1}: mend it or"
          + " leave it out"),
  STAY_SAID_TWICE(
      Severity.ERROR,
      "\"{0}\" says again how long the rig stands, or until when; leave one of the two, such as in"
          + " {1}"),
  NIGHT_WITHOUT_END(
      Severity.ERROR,
      "\"{0}\" does not say how long the night is; write such as \"{1}\" or \"{2}\""),
  TOO_MANY_PLACES(
      Severity.ERROR, "the list has {0} places, {1} is the most at once; paste it in parts"),

  // Tires
  NOT_A_DATE_CODE(
      Severity.ERROR,
      "\"{0}\" has no date code; type the last four digits of the tire's identification number, such"
          + " as \"0109\"; if it ends without digits, the whole number is on the other sidewall"),
  NO_SUCH_WEEK(
      Severity.ERROR,
      "\"{0}\" means week {1} of {2}, whose weeks run from 01 to {3}; read the digits at the end of"
          + " the identification number again"),
  RATED_LOAD_MISSING(
      Severity.GAP,
      "tire \"{0}\" has no rated load; type the load on its sidewall, or its load index (0 to 279)"),
  RATED_PRESSURE_MISSING(
      Severity.GAP,
      "tire \"{0}\" has no rated pressure; type the cold pressure that its sidewall or its maker"
          + " gives with the rated load"),
  DUAL_LOAD_MISSING(
      Severity.GAP,
      "tire \"{0}\" has no dual figure, and for this class none is estimated; type the dual load or"
          + " the dual load index on its sidewall, or the maker's dual rows"),
  DUAL_LOAD_ABOVE_SINGLE(
      Severity.ERROR,
      "tire \"{0}\" has a dual load of {1}, above its single load of {2}; check the two figures"),
  DUAL_LOAD_ESTIMATED(
      Severity.NOTE,
      "tire \"{0}\" has no dual figure; {1} is estimated as 0.91 of the single load; type the dual"
          + " load on its sidewall"),
  TIRE_CLASS_UNKNOWN(
      Severity.NOTE,
      "tire \"{0}\" is of no known class and is judged as a passenger-car tire, its rating divided by"
          + " 1.10; type its class or its full size"),
  ROWS_END_EARLY(
      Severity.NOTE,
      "tire \"{0}\" has rows up to {1}, below its rated pressure of {2}; above the last row its load"
          + " counts as no higher; type the rows up to the rated pressure"),
  LABEL_POINT_NOT_USED(
      Severity.NOTE,
      "the label's {1} at {2} is more than tire \"{0}\" (rated {3}) can carry there; it is left out"
          + " of its estimate: check the entry, the label's figures and the sidewall"),

  // Fitting
  NO_TIRE_TYPE(
      Severity.GAP,
      "tire \"{0}\" has no figures of its sidewall: load and margin unknown; give its type"),
  NO_LABEL_PRESSURE(
      Severity.GAP,
      "no cold pressure from the certification label: what to set it to is taken from the tire; read it off"
          + " the label or placard"),
  LABEL_DOES_NOT_SPEAK(
      Severity.GAP,
      "the label speaks of {0}, fitted is {1}: its pressure is not of these tires; have a tire"
          + " technician confirm pressure and wheel limit"),
  LABEL_ABOVE_LIMIT(
      Severity.GAP,
      "the label's cold pressure {0} is above {1}, the lowest limit of tire, wheel and valve; set"
          + " no more than that, and ask a tire technician which of them is wrong here"),
  NO_TIRE_FITTED(Severity.GAP, "no tire is fitted here in the file: nothing is forecast; name one"),
  NO_READING(
      Severity.GAP,
      "no cold reading of this tire: nothing is forecast for it; gauge it cold and log the reading"),
  FIRST_READING_NOT_COLD(
      Severity.GAP,
      "its first reading was of a warm or just filled tire, and the drive before it is not known:"
          + " nothing is forecast from it; read it cold, or type the leg that was driven before"),
  READING_NOT_COLD(
      Severity.NOTE,
      "a reading of tire {0} is noted cold less than three hours after the rig rolled, by noted times:"
          + " it counts as warm; correct its state or the times"),
  NO_LOAD(
      Severity.GAP,
      "{0} has neither a scale weight nor a GAWR: its load margin is unknown; weigh it or read the"
          + " label"),
  NOT_WEIGHED(
      Severity.NOTE,
      "{0} was not weighed: its load is taken as 79 % of its GAWR, give or take 11, if no axle is over"
          + " its GAWR; weigh the loaded rig axle by axle"),
  TARGET_NOT_USED(
      Severity.NOTE,
      "{0}: the chosen cold pressure {1} is not used: it needs the maker's rows, a scale weight, and"
          + " at least {2}"),

  // Trip file
  NO_SUCH_FILE(Severity.ERROR, "there is no file {0}; check its name and folder"),
  CANNOT_READ(Severity.ERROR, "{0} cannot be read ({1}); check its permissions"),
  CANNOT_WRITE(
      Severity.ERROR,
      "{0} cannot be written ({1}); what stood there is unchanged; save under another name or in"
          + " another folder"),
  FILE_TOO_LARGE(
      Severity.ERROR, "the file is larger than {0} MiB, the most a trip file may have; shorten it"),
  NOT_UTF8(Severity.ERROR, "the file is not UTF-8 text; save it as UTF-8 in a text editor"),
  NOT_JSON(Severity.ERROR, "line {0}, column {1} is not JSON ({2}); mend the text there"),
  JSON_LIMIT(
      Severity.ERROR,
      "line {0}, column {1}: {2}; a trip file has at most {3} levels and {4} names, values and"
          + " brackets: make it smaller"),
  HALF_CHARACTER(
      Severity.ERROR,
      "a text with half a character (half of a surrogate pair), which no file can hold; write the whole"
          + " character, or none"),
  TEXT_TOO_LONG(
      Severity.NOTE,
      "a text of {0} characters, more than the {1} that are taken: it is kept as it is, and shortened"
          + " where it is shown; shorten it, or keep the rest elsewhere"),
  TEXT_NOT_TAKEN(
      Severity.ERROR,
      "a text of {0} characters is not taken, the most is {1}; shorten it, or keep the rest elsewhere"),
  TOO_MANY_STOPS(
      Severity.ERROR,
      "{0} stops, and a trip has {1} at most; split it: one trip ends where the next one starts"),
  TOO_MANY_TIRES(
      Severity.ERROR,
      "{0} tires, and a rig has {1} at most; make a trip of its own for each rig that goes along"),
  MORE_PROBLEMS(Severity.NOTE, "and {0} more problems; mend those above first"),
  NOT_A_TRIP_FILE(
      Severity.ERROR, "this is no trip file: \"format\" is {0}; a trip file has \"{1}\" there"),
  NEWER_VERSION(
      Severity.ERROR,
      "the file has version {0}, this program reads version {1}; open it with a newer program; it"
          + " was left as it is"),
  NEWER_THERE(
      Severity.ERROR,
      "{0} holds a trip of version {1}, this program writes version {2}; it was left as it is: save"
          + " under another name"),
  OLDER_VERSION(
      Severity.NOTE,
      "the file has version {0}; saved from here it gets version {1}, which older programs refuse:"
          + " keep a copy if one of them is to open it"),
  NO_SUCH_VERSION(Severity.ERROR, "\"version\" is {0}; write {1}"),
  MISSING_FIELD(Severity.ERROR, "\"{0}\" is missing; write {1}"),
  WRONG_KIND(Severity.ERROR, "{0} is not {1}; write such as {2}"),
  UNKNOWN_FIELD(
      Severity.ERROR,
      "there is no field \"{0}\" here; the nearest is \"{1}\"; a name that begins with \"x-\" is"
          + " kept unread"),
  NOTE_NOT_KEPT(
      Severity.ERROR, "\"{0}\" is not kept on this object; move it to the object around it"),
  NOT_A_CHOICE(Severity.ERROR, "\"{0}\" is none of {1}; write one of them"),
  NOT_A_NAME(
      Severity.ERROR,
      "\"{0}\" is no name; write at least one letter or digit, no blank at either end and no line break"),
  NOT_A_TIME(Severity.ERROR, "\"{0}\" is no point in time; write such as {1}"),
  TIME_WITHOUT_ZONE(
      Severity.ERROR, "\"{0}\" lacks its zone; write offset and zone behind it, such as {1}"),
  UNKNOWN_ZONE(
      Severity.ERROR, "there is no time zone \"{0}\"; write a region such as America/Denver"),
  OFFSET_AGAINST_ZONE(
      Severity.ERROR,
      "\"{0}\": the offset {1} is not that of {2}, which has {3} then; mend the offset, the zone or"
          + " the time"),
  TIME_IN_GAP(
      Severity.NOTE,
      "\"{0}\" is skipped by the clocks of {1} that day and counts as {2}; write that to be clear"),
  NOT_A_DATE(Severity.ERROR, "\"{0}\" is no date; write such as {1}"),
  NOT_A_DURATION(
      Severity.ERROR, "\"{0}\" is no duration up to {1}; write whole numbers, such as {2}"),
  NOT_AN_AXLE(
      Severity.ERROR, "\"{0}\" names no axle; write the vehicle's name and a number, such as {1}"),
  NOT_A_POSITION(Severity.ERROR, "\"{0}\" names no wheel position; write such as {1}"),
  NOT_ABOVE_ZERO(Severity.ERROR, "{0} must be above zero; mend it or leave the field out"),
  NAME_TAKEN(Severity.ERROR, "the {0} \"{1}\" stands at {2} already; give each its own"),
  NO_SUCH_NAME(Severity.ERROR, "there is no {0} \"{1}\"; known: {2}; mend one of them"),
  FITTED_TWICE(
      Severity.ERROR, "tire \"{0}\" is at {1} already; a tire is in one place: mend one of them"),
  SLOT_DOES_NOT_FIT(
      Severity.ERROR,
      "\"{0}\" is no place on {1}, which has {2}; mend the place or the axle's \"dual\""),
  TIMES_OUT_OF_ORDER(
      Severity.ERROR, "{0} is earlier than {1} before it ({2}); mend one of them or the order"),
  PROFILE_OUT_OF_ORDER(
      Severity.ERROR,
      "{0} from the start of the leg does not come after {1}; put the points in order"),
  PROFILE_BEYOND_LEG(
      Severity.ERROR, "{0} lies beyond the end of the leg, which is {1} long; mend one of them"),
  NOT_OUR_CALENDAR(
      Severity.ERROR,
      "this file is not a calendar of reminders that was written here, so it is not replaced; give"
          + " another name"),
  CALENDAR_OF_ANOTHER_TRIP(
      Severity.ERROR,
      "this calendar holds {0} reminders of another trip, which would be called off: give another"
          + " name"),
  NOTHING_AHEAD(
      Severity.ERROR,
      "nothing is known of the way ahead of {0}: it is the last stop, or times on the way are"
          + " missing; name an earlier stop, or type departure and legs"),
  NOTHING_KNOWN_HERE(
      Severity.ERROR,
      "nothing is known of this tire at {0}: no time, no air temperature, no elevation, no reading or"
          + " no label; type what is missing"),
  NO_GPX_ROUTE(
      Severity.ERROR,
      "no route can be taken from this file: {0}; choose a GPX file with a track or" + " a route"),
  NO_READINGS_TABLE(
      Severity.ERROR, "no readings can be taken from it: {0}; write it as text with a header row"),
  GPX_HEIGHTS_LEFT_OUT(
      Severity.NOTE,
      "heights left out: {0}, while the ground there is at about {1}; heights are estimated instead,"
          + " type them where you know better"),
  GPX_POINT_LEFT_OUT(Severity.NOTE, "left out: {0} is no place on the earth"),
  GPX_HEIGHT_LEFT_OUT(
      Severity.NOTE,
      "elevation left out: \"{0}\" is no elevation of the ground in meters, -500 to 9000; the point stays"
          + " without one"),
  GPX_LINE_LEFT_OUT(Severity.NOTE, "left out: {0} holds {1}"),
  GPX_MORE_LEFT_OUT(Severity.NOTE, "and {0} more were left out"),
  GPX_GAP(
      Severity.NOTE,
      "{0}: {1} between its segments are missing, taken as a straight way; a leg over it may come out"
          + " too short"),
  GPX_WAYPOINT_OFF(Severity.NOTE, "{0} is {1} off the track: left out"),
  GPX_WAYPOINT_TWICE(Severity.NOTE, "{0} lies where {1} is a stop already: left out"),
  WISH_TWICE(
      Severity.ERROR, "there is a wish for the stop \"{0}\" before this one; keep one of them"),
  FIGURES_NOT_HERE(
      Severity.ERROR,
      "figures to set stand at the stop \"{0}\", where nothing is to be set; take them out, or write"
          + " \"set here\""),
  TOO_FEW_ROWS(
      Severity.ERROR, "a load/inflation table has at least two rows, not {0}; add one or leave it"),
  ROW_FALLS(
      Severity.ERROR,
      "pressure must rise from row to row and loads must not fall, but {0} follows {1}; check both"
          + " rows"),
  BELOW_RATED_PRESSURE(
      Severity.ERROR,
      "the highest cold pressure {0} is below the rated pressure {1}; check the sidewall"),
  FLOW_ABOVE_REACH(
      Severity.ERROR,
      "the compressor's flow is given at {0}, above the {1} that it reaches; read its sheet again"),
  SPLIT_NOT_WHOLE(
      Severity.ERROR,
      "the parts of the weight on axles and hitch add up to {0} %, not 100 %; mend the parts"),
  LOW_ABOVE_HIGH(Severity.ERROR, "the low {0} is above the high {1}; exchange or mend them"),
  NOT_ONE_FIGURE(
      Severity.ERROR,
      "an entry has one of \"temperature\", \"hours\", or \"date\" with \"low\" and \"high\", but"
          + " this has {0} of them; split or complete it"),
  LEG_AFTER_LAST_STOP(
      Severity.ERROR,
      "the last stop \"{0}\" has a leg that leads nowhere; add a stop or remove it"),
  NO_DEPARTURE(
      Severity.GAP,
      "the departure time of the first stop \"{0}\" is missing, so there is no forecast; write"
          + " \"leave\", such as {1}"),
  TOO_FEW_STOPS(
      Severity.GAP, "a forecast needs at least two stops, the route has {0}; add where it leads"),

  // Fields
  NOT_A_COORDINATE(
      Severity.ERROR,
      "\"{0}\" is no place on the earth; write latitude -90 to 90 and longitude -180 to 180, such as"
          + " 37.469, -105.87"),

  // Weather services
  NO_CONSENT(
      Severity.ERROR,
      "nothing is asked before you agree to what is sent where and give a contact that the weather"
          + " services see"),
  NOT_A_SERVICE(
      Severity.ERROR,
      "\"{0}\" in feeds.properties is no weather service, or stands there twice; write {1} in the order"
          + " wanted, with commas between"),
  NOT_A_CONTACT(
      Severity.ERROR,
      "\"{0}\" is no contact; write an e-mail address or a web address, which the weather services"
          + " will see"),
  NOT_A_TILE_ADDRESS(
      Severity.ERROR,
      "\"{0}\" in feeds.properties is no address of a map server; write one that begins with https://"
          + " and has z, x and y in braces, for level, column and row"),
  NOT_A_SERVICE_ADDRESS(
      Severity.ERROR,
      "\"{0}\" is no address of a weather service; write one that begins with https:// and has no"
          + " question mark; http:// is for this computer only, such as http://127.0.0.1:8080"),
  FEED_UNREACHABLE(
      Severity.GAP,
      "{0} cannot be reached ({1}): what is known already stays as it is; refresh again when there is"
          + " a connection"),
  FEED_BUSY(
      Severity.GAP, "{0} is busy and asks to be left alone until {1}; refresh again after that"),
  FEED_SLOW(
      Severity.GAP,
      "{0} answers too slowly now (waited {1} s for it) and is left alone until {2}: what is known"
          + " already stays as it is; refresh again after that"),
  FEED_TIME_OVER(
      Severity.GAP,
      "{0} was not asked any more: one refresh takes {1} s at most; what was answered is kept, refresh"
          + " again to go on"),
  FEED_DENIED(
      Severity.GAP,
      "{0} refuses to answer this program (status {1}); check the contact in the settings, and refresh"
          + " later"),
  FEED_OUTSIDE_AREA(
      Severity.GAP,
      "{0} has nothing for this place (status {1}); ask another service, or type the temperature"),
  FEED_REJECTED(
      Severity.GAP,
      "{0} does not take the question (status {1}); type the temperature, and look for a newer version"
          + " of this program"),
  FEED_FAILED(
      Severity.GAP,
      "{0} has a fault of its own (status {1}, asked {2} times); refresh later, or type the"
          + " temperature"),
  FEED_NOT_UNDERSTOOD(
      Severity.GAP,
      "{0} sent what is no answer to the question ({1}): nothing of it is used; refresh later, or type"
          + " the temperature"),
  FEED_TOO_LARGE(
      Severity.GAP,
      "{0} sent more than {1} MiB, the most that is read: nothing of it is used; refresh later, or type"
          + " the temperature"),
  FEED_REDIRECTED(
      Severity.GAP,
      "{0} points to {1}, which is not followed; check the address of the service in the settings"),
  FEED_NO_TEMPERATURE(
      Severity.GAP,
      "{0} gives no temperature from {1} to {2}; refresh nearer to the day, or type it"),
  FEED_NO_OBSERVATIONS(
      Severity.GAP, "{0} has forecasts only, nothing measured; type what the air was"),
  FEED_CANCELLED(
      Severity.GAP,
      "the question to {0} was stopped before the answer: what is known already stays as it is;"
          + " refresh to ask again"),
  FEED_ABSURD(
      Severity.NOTE,
      "{0} gives temperatures that cannot be: {1}; they are left out; type the temperature there if it"
          + " matters"),
  FEED_IMPLAUSIBLE(
      Severity.GAP,
      "{0} gives about {1} where air of {2} is to be expected by place, height and date, as if its"
          + " figures were in another unit: nothing of it is used; type the temperature"),
  FEED_WRONG_HEIGHT(
      Severity.GAP,
      "{0} says that its figures are for {1} m above the sea, and the place lies at {2}: nothing of it"
          + " is used; check the elevation of the stop, or type the temperature"),
  FEED_OLD(
      Severity.NOTE,
      "{0} made its forecast {1}, {2} ago; it is used; refresh later for a newer one"),
  OLD_FORECAST(
      Severity.NOTE,
      "the air here was forecast on {0}, {1} days before the time it tells, farther ahead than any"
          + " service looks; get temperatures again, or type them"),
  FEED_UNREAD(
      Severity.NOTE,
      "{0} sent {1} temperatures that are not understood, such as {2}; they are left out; look for a"
          + " newer version of this program"),
  FEED_COARSER(
      Severity.NOTE,
      "{0} has no detailed forecast now; its hourly one, rounded to whole degrees, is used; refresh"
          + " later for the other"),
  FEED_DEPRECATED(
      Severity.NOTE,
      "{0} says that it will stop answering this kind of question; look for a newer version of this"
          + " program"),

  // Page for the phone
  NOT_SENT_BACK(
      Severity.ERROR,
      "that is not what a page for the phone sends back: {0}; copy the whole of its text, or choose"
          + " the file that it saved"),
  MADE_OF_ANOTHER(
      Severity.NOTE,
      "the page was made when the trip was not as it is now: what it told may not hold; make a new"
          + " one"),
  SENT_LEFT_OUT(Severity.NOTE, "left out: {0}: {1}"),

  // Command line
  NAME_BEYOND_LOCALE(
      Severity.ERROR,
      "the name \"{0}\" cannot be told: this program was started where names have the letters of {1}"
          + " only; start it with LC_ALL=C.UTF-8, or give the file a name of plain letters"),
  NO_SUCH_POSITION(
      Severity.ERROR, "there is no tire position \"{0}\"; the rig has {1}, or their words"),
  NO_SUCH_STOP(
      Severity.ERROR,
      "there is no stop \"{0}\"; the trip has {1}; type one of them, or its number"),
  AMBIGUOUS_STOP(
      Severity.ERROR, "\"{0}\" fits several stops: {1}; type more of the name, or the number"),
  NO_SUCH_STOP_NUMBER(Severity.ERROR, "there is no stop {0}; the trip has stops 1 to {1}"),
  TIME_NOT_KNOWN(
      Severity.GAP,
      "the time at {0} is not known, so nothing is forecast there; correct the times before it"),
  FILE_EXISTS(
      Severity.ERROR, "{0} exists already; add --force to replace it, or name another file"),
  IS_THE_TRIP_FILE(Severity.ERROR, "{0} is the trip file itself, left as it is; name another file");

  /** How bad a problem is. */
  public enum Severity {
    /** The input cannot be used. */
    ERROR,
    /** A figure is missing: what needs it is unknown, all else stands. */
    GAP,
    /** Worth knowing; nothing is missing. */
    NOTE
  }

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d)}");

  private final Severity severity;
  private final String template;

  ProblemCode(Severity severity, String template) {
    this.severity = severity;
    this.template = template;
  }

  /** How bad it is. */
  public Severity severity() {
    return severity;
  }

  /** The text with its placeholders. */
  public String template() {
    return template;
  }

  /** How many arguments the text needs: one more than its highest placeholder. */
  public int argumentCount() {
    int count = 0;
    Matcher matcher = PLACEHOLDER.matcher(template);
    while (matcher.find()) {
      count = Math.max(count, Integer.parseInt(matcher.group(1)) + 1);
    }
    return count;
  }

  String text(List<String> arguments) {
    return PLACEHOLDER
        .matcher(template)
        .replaceAll(
            match -> Matcher.quoteReplacement(arguments.get(Integer.parseInt(match.group(1)))));
  }
}
