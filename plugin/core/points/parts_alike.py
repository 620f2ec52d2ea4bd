"""What stops a file of several parts: heights of other levels, and headers within it whose words nobody knows."""

from __future__ import annotations

from typing import Collection, FrozenSet, List, Optional, Sequence

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text, message
from .below import Line
from .columns import coordinates_of
from .geographic import HeightKind
from .level_words import ELLIPSOID, differ, levels_among
from .lines_of_text import split_line
from .number_marks import is_no_value, is_number
from .pointfile import PointFile
from .questions import Answer, Question, QuestionError, Topic
from .said_above import HEIGHT_WORDS
from .source import TextSource

OTHER_LEVEL = Text(
    "sections.other_level",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: from here on heights count from another level than above ({first}, then {second}); save "
        "its parts as files of their own, and bring the heights of one to the level of the other.",
    ),
)
UNKNOWN_HEADER = Text(
    "sections.unknown_header",
    QT_TRANSLATE_NOOP(
        "core",
        "line {line} ('{words}') looks like another header, and its words are not known; if the lines behind it have "
        "other columns, save them as a file of their own; if they have the same, say so",
    ),
)
SAME_COLUMNS = Text("sections.same_columns", QT_TRANSLATE_NOOP("core", "the same columns in the whole file"))
NOT_SAID = Text("sections.level_not_said", QT_TRANSLATE_NOOP("core", "not said"))


def check_levels(file: str, parts: Sequence[PointFile], lines: Sequence[int]) -> None:
    """Raises SurveyError where a part (begun in ``lines``, but the first) has heights of another level."""
    levels = [_levels(part) for part in parts]
    for found, line in zip(levels[1:], lines):
        if differ(levels[0], found):
            first, second = (", ".join(sorted(one)) or message(NOT_SAID) for one in (levels[0], found))
            raise SurveyError(OTHER_LEVEL, file=file, line=line, first=first, second=second)


def _levels(part: PointFile) -> FrozenSet[str]:
    columns, header = part.format.columns, part.format.header
    role = coordinates_of(columns)[2]
    if role == "ellipsoidal_height" or (
        part.recognition is not None and part.recognition.heights is HeightKind.ELLIPSOIDAL
    ):
        return frozenset({ELLIPSOID})
    place = columns.get(role, 0)
    words = header.words[place - 1 : place] if header is not None and place else ()
    return levels_among(words, part.above, HEIGHT_WORDS)


def ask_of_headers(
    source: TextSource, mark: str, words: Sequence[Line], known: Collection[int], parts: Sequence[PointFile]
) -> None:
    """Raises QuestionError where one of the lines of ``words``, not of the ``known`` numbers, stands between points
    and has a word in each column of coordinates, as a header has.
    """
    for part in parts:
        points = part.points.source_line
        if len(points) < 2:
            continue
        header = part.format.header
        own = header.words if header is not None else ()
        for line in words:
            if line.number in known or not points.min() < line.number < points.max():
                continue
            found = _as_header(line, mark, part)
            if found is not None and tuple(found) != tuple(own) and not _same_line(source, line, header, mark):
                raise QuestionError(source.file, [_question(line, part)])


def _same_line(source: TextSource, line: Line, header: Optional[object], mark: str) -> bool:
    """Whether the line is the header again, or a comment with it."""
    number = getattr(header, "line", 0)
    if not number:
        return False
    above = next(iter(source.texts([number])), "")
    bare = (text.strip().lstrip(mark or "#").strip() for text in (above, line.text))
    return len(set(bare)) == 1


def _as_header(line: Line, mark: str, part: PointFile) -> Optional[List[str]]:
    """The cells of a line that has words where coordinates stand, None for any other."""
    text = line.text.strip()
    comment = bool(mark) and text.startswith(mark)
    delimiter = part.format.delimiter
    cells = split_line(text[len(mark) :].strip() if comment else text, delimiter) or []
    places = [part.format.columns.get(role, 0) - 1 for role in coordinates_of(part.format.columns)]
    width = max(part.format.columns.values(), default=0)
    if len(cells) <= max(places) or (delimiter == " " and len(cells) != width):
        return None
    at = [cells[place].strip() for place in places]
    if any(is_number(cell) for cell in cells) or not all(_is_word(cell) for cell in at):
        return None
    return cells if len(set(at)) == len(at) else None


def _is_word(cell: str) -> bool:
    return 0 < len(cell) <= 40 and any(sign.isalpha() for sign in cell) and not is_no_value(cell)


def _question(line: Line, part: PointFile) -> Question:
    columns = ",".join(f"{role}={column}" for role, column in part.format.columns.items())
    answers = (Answer("--columns", columns, message(SAME_COLUMNS)),)
    return Question(Topic.AXES, message(UNKNOWN_HEADER, line=line.number, words=line.text.strip()[:60]), answers)
