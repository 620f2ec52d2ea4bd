"""What is said of receiver logs, and of their lines that are no points."""

from __future__ import annotations

from ..messages import QT_TRANSLATE_NOOP, Text

NO_SENTENCES = Text(
    "nmea.no_sentences",
    QT_TRANSLATE_NOOP("core", "{file}: none of its {lines} lines is an NMEA 0183 sentence with a right checksum."),
)
NO_POSITIONS = Text(
    "nmea.no_positions",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: none of its {sentences} NMEA sentences gives a position; record GGA or GNS sentences with a fix.",
    ),
)
NO_DATE = Text(
    "nmea.no_date",
    QT_TRANSLATE_NOOP("core", "{file}: no RMC or ZDA sentence gives a date; times are of the day, as of 1970-01-01."),
)
NO_ACCURACY = Text(
    "nmea.no_accuracy",
    QT_TRANSLATE_NOOP("core", "{file}: {count} of {total} positions have no GST sentence; their accuracy is unknown."),
    one=QT_TRANSLATE_NOOP("core", "{file}: one of {total} positions has no GST sentence; its accuracy is unknown."),
)
HEIGHTS_SENT = Text(
    "nmea.heights_sent",
    QT_TRANSLATE_NOOP("core", "{file}: heights are above mean sea level as the receiver sent them."),
)
HEIGHTS_SUMMED = Text(
    "nmea.heights_summed",
    QT_TRANSLATE_NOOP("core", "{file}: heights are ellipsoidal: height above mean sea level plus geoid separation."),
)
NOT_A_SENTENCE = Text("reject.not_a_sentence", QT_TRANSLATE_NOOP("core", "the line is no NMEA sentence"))
NO_CHECKSUM = Text("reject.no_checksum", QT_TRANSLATE_NOOP("core", "the sentence has no checksum"))
BAD_CHECKSUM = Text(
    "reject.bad_checksum",
    QT_TRANSLATE_NOOP("core", "the checksum is {found}, but the characters give {right}: damaged on its way"),
)
NO_SEPARATION = Text(
    "reject.no_separation",
    QT_TRANSLATE_NOOP("core", "no geoid separation was sent, so the ellipsoidal height is unknown"),
)
SAME_EPOCH = Text("reject.same_epoch", QT_TRANSLATE_NOOP("core", "the same epoch as line {line}, which is used"))
