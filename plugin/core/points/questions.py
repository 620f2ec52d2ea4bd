"""Questions that only the user can answer, each with its answers and the option that gives each of them.

What would change coordinates and is not certain is asked, never assumed. Whoever reads a survey catches
:class:`QuestionError` where answers can be clicked; on the command line its one line names the options to type.
"""

from __future__ import annotations

import shlex
from dataclasses import dataclass, replace
from enum import Enum
from typing import Callable, Optional, Sequence, Tuple, Union

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message


class Topic(Enum):
    """What can be open about a survey."""

    COLUMNS = "columns"
    TWICE = "twice"
    AXES = "axes"
    DEGREES = "degrees"
    ANGLES = "angles"
    UNIT = "unit"
    HEIGHT_UNIT = "height-unit"
    HEIGHT = "height"
    HEIGHT_KIND = "height-kind"
    LETTER = "letter"
    NO_VALUE = "no-value"
    ANTENNA = "antenna"
    LAYER = "layer"
    COMMENT = "comment"
    CRS = "crs"
    CONTROL = "control"
    CORRECTION = "correction"


ASKED = Text("points.ambiguous", QT_TRANSLATE_NOOP("core", "{file}: {question}; type one of: {options}."))
NO_ANSWER = Text("points.ambiguous_file", QT_TRANSLATE_NOOP("core", "{file}: {question}."))
COLUMNS_OPEN = Text(
    "points.columns_not_said",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: nothing says for sure which columns are easting, northing and height (first line: {words}); "
        "give --columns, such as {options}.",
    ),
)
COLUMNS_LACK = Text(
    "points.columns_lack",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: no three of its columns can be easting, northing and height (first line: {words}); export it again "
        "with all three.",
    ),
)
OPTION = Text("questions.option", QT_TRANSLATE_NOOP("core", "{typed} ({label})"))
OPTION_AT = Text("questions.option_at", QT_TRANSLATE_NOOP("core", "{typed} ({label}; {place})"))
OPTION_BEFORE = Text("questions.option_before", QT_TRANSLATE_NOOP("core", "{one} | {more}"))
MORE = Text("questions.more", QT_TRANSLATE_NOOP("core", "{one} Then: {more}"))


@dataclass(frozen=True)
class Answer:
    """One answer to a question.

    ``option``: of the command line that gives it, such as ``--unit``; ``value``: what to write behind it, "" for an
    option without a value. ``label``: what the answer says. ``reasons``: what speaks for or against it. ``place``:
    where it would put the site, None while nobody has looked. ``fill_in``: ``value`` is an example, to be replaced
    by the user's own.
    """

    option: str
    value: str
    label: Message
    reasons: Tuple[Message, ...] = ()
    place: Optional[Message] = None
    fill_in: bool = False

    @property
    def typed(self) -> str:
        """What to type, as a shell takes it."""
        if not self.value:
            return self.option
        if self.value.startswith("-"):
            return f"{self.option}={shlex.quote(self.value)}"
        return f"{self.option} {shlex.quote(self.value)}"


@dataclass(frozen=True)
class Question:
    """A question that the survey does not answer, its answers, the likeliest first.

    ``stops``: whether nothing goes on without an answer; where something does, ``text`` says what is assumed.
    """

    topic: Topic
    text: Message
    answers: Tuple[Answer, ...] = ()
    stops: bool = True


class QuestionError(SurveyError):
    """A survey that cannot be read, or brought into place, before someone has answered its ``questions``.

    ``file``: whose questions they are. ``first_line``: of the file, to show where the columns are asked for.
    """

    def __init__(self, file: str, questions: Sequence[Question], first_line: str = "") -> None:
        self.file, self.questions, self.first_line = file, tuple(questions), first_line
        said = _said(file, self.questions, first_line)
        super().__init__(said.text, **said.values)

    def looked_up(self, place: Callable[[Answer], Optional[Message]]) -> QuestionError:
        """The same error with the ``place`` of each answer."""
        questions = [
            replace(one, answers=tuple(replace(answer, place=place(answer)) for answer in one.answers))
            for one in self.questions
        ]
        return QuestionError(self.file, questions, self.first_line)


def _said(file: str, questions: Sequence[Question], first_line: str) -> Message:
    one, more = questions[0], questions[1:]
    if one.topic is Topic.COLUMNS and one.answers:
        said = message(COLUMNS_OPEN, file=file, words=first_line[:60], options=_options(one.answers))
    elif one.topic is Topic.COLUMNS:
        said = message(COLUMNS_LACK, file=file, words=first_line[:60])
    elif one.answers:
        said = message(ASKED, file=file, question=one.text, options=_options(one.answers))
    else:
        said = message(NO_ANSWER, file=file, question=one.text)
    # The code of the error is that of its first question.
    return said if not more else message(Text(said.text.code, MORE.english), one=said, more=_said(file, more, ""))


def _options(answers: Sequence[Answer]) -> Union[str, Message]:
    one = answers[0]
    notes = [note for note in (None if one.option == "--columns" else one.label, one.place) if note is not None]
    said: Union[str, Message] = one.typed  # columns say themselves what they are
    if len(notes) == 1:
        said = message(OPTION, typed=one.typed, label=notes[0])
    elif notes:
        said = message(OPTION_AT, typed=one.typed, label=notes[0], place=notes[1])
    return said if len(answers) == 1 else message(OPTION_BEFORE, one=said, more=_options(answers[1:]))
