"""What the stages noticed, as the report says it; reasons of points in words."""

from __future__ import annotations

from pathlib import PurePath
from typing import Sequence

from ..messages import QT_TRANSLATE_NOOP, Message
from ..points.pointset import Reason
from . import markup
from .labels import Words

NOTICED = QT_TRANSLATE_NOOP("core", "Noticed on the way:")
REASONS = {
    Reason.BY_HAND: QT_TRANSLATE_NOOP("core", "decided by hand"),
    Reason.NO_FIX: QT_TRANSLATE_NOOP("core", "no fixed ambiguities"),
    Reason.SIGMA_HORIZONTAL: QT_TRANSLATE_NOOP("core", "plan less certain than allowed"),
    Reason.SIGMA_VERTICAL: QT_TRANSLATE_NOOP("core", "height less certain than allowed"),
    Reason.TILT: QT_TRANSLATE_NOOP("core", "pole tilted"),
    Reason.POLE_HEIGHT: QT_TRANSLATE_NOOP("core", "pole lifted or its height wrong"),
    Reason.STANDING_STILL: QT_TRANSLATE_NOOP("core", "recorded while standing still"),
    Reason.FIX_JUMP: QT_TRANSLATE_NOOP("core", "jump at loss or regain of the fix"),
    Reason.DUPLICATE: QT_TRANSLATE_NOOP("core", "repeats another point"),
    Reason.CHECK_SHOT: QT_TRANSLATE_NOOP("core", "check shot, kept out to test the surface"),
    Reason.NOT_GROUND: QT_TRANSLATE_NOOP("core", "not on the ground, by its code"),
    Reason.PDOP: QT_TRANSLATE_NOOP("core", "satellites badly spread (PDOP)"),
    Reason.CORRECTION_AGE: QT_TRANSLATE_NOOP("core", "correction too old"),
    Reason.FEW_EPOCHS: QT_TRANSLATE_NOOP("core", "too few observations"),
    Reason.OFF_LINE: QT_TRANSLATE_NOOP("core", "off the line it is coded for"),
    Reason.DOUBTFUL_HEIGHT: QT_TRANSLATE_NOOP("core", "height doubtful: look at it"),
    Reason.IN_LINE: QT_TRANSLATE_NOOP("core", "stands in a found line, which stands for it in the surface"),
    Reason.LEFT_OUT: QT_TRANSLATE_NOOP("core", "flagged stretch, left out of the surface"),
    Reason.SUPERSEDED: QT_TRANSLATE_NOOP("core", "superseded by newer ground of a later visit"),
    Reason.LEVEL: QT_TRANSLATE_NOOP("core", "on another level than the rest of the survey"),
    Reason.NO_PLACE: QT_TRANSLATE_NOOP("core", "no finite place or height"),
    Reason.ZERO: QT_TRANSLATE_NOOP("core", "coordinates of zero"),
    Reason.SWAPPED: QT_TRANSLATE_NOOP("core", "coordinates swapped"),
    Reason.STRAY: QT_TRANSLATE_NOOP("core", "stray: farther off than the walk could have gone"),
    Reason.FAR_OFF: QT_TRANSLATE_NOOP("core", "far from all others: look at it"),
}


def messages_list(messages: Sequence[Message], say: Words, lead: str = NOTICED) -> str:
    """The messages under ``lead``, "" where there are none."""
    if not messages:
        return ""
    title = markup.paragraph(say(lead))
    return title + markup.bullets(say_message(message, say) for message in messages)


def say_message(message: Message, say: Words) -> str:
    """A message in the reader's language; of files it names only the name, so that the report is the same anywhere."""
    values = {key: PurePath(value).name if key == "file" else value for key, value in message.values.items()}
    return Message(message.text, values).say(say.translate, units=say.units)
