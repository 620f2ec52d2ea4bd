"""What parts the columns of a file."""

from __future__ import annotations

from collections import Counter
from typing import List, Optional, Sequence, Tuple

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .angles import is_marked_angle
from .columns import coordinates_of, roles_of_header
from .lines_of_text import HEADER_WITHIN, Sample, is_value, split_line
from .number_marks import is_number
from .times import is_time

#: Delimiters in the order in which they are tried; a space stands for a run of spaces and tabs.
DELIMITERS = {"\t": "tab", ";": "semicolon", ",": "comma", " ": "spaces"}
#: Those that are tried where none of the usual ones gives numbers.
_SELDOM = ("|", "/", "^", "~", ":", "*", "&", "_", "@")
#: The word for columns at fixed places.
FIXED = "fixed"
#: The coordinates of a line stand among its first fields.
_LOOKED_AT = 50
#: Words of a header that are looked at to find out whether it fits.
_WORDS = 200
#: Degrees, minutes, seconds and a letter, and one more.
_ANGLE_WEIGHT = 5
_STEADY = 0.9

BAD_DELIMITER = Text(
    "points.bad_delimiter",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: '{delimiter}' cannot be a delimiter; use comma, semicolon, tab, space, fixed or one sign such as '|'.",
    ),
)
WRONG_DELIMITER = Text(
    "points.wrong_delimiter",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: no three columns with delimiter {tried} ('{start}'); give --delimiter."
    ),
)

RUN_OF_DIGITS = Text(
    "points.run_of_digits",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: nothing stands between its columns ('{start}'); export the survey with a delimiter.",
    ),
)

#: Whether the header fits (2: and most lines have as many columns), lines with three numbers, whether most are alike,
#: numbers, lines with three fields.
_Score = Tuple[int, int, bool, int, int]


def settle_delimiter(file: str, given: Optional[str], sample: Sample) -> str:
    """The delimiter to use; where none is given that whose columns the header names, else the one with most lines of
    three numbers.

    Raises SurveyError when it cannot be a delimiter or leaves no line with three columns.
    """
    tried = [_meant(file, given)] if given is not None else [*DELIMITERS, "|"]
    best, best_score = _best(tried, sample)
    if given is None and not best_score[1]:
        seldom, score = _best(_SELDOM, sample)
        if score[1]:
            best = seldom
    if not best:
        names = ", ".join(DELIMITERS.get(delimiter, delimiter) for delimiter in tried)
        line = sample.lines[0]
        if given is None and all(one.text.strip().isalnum() for one in sample.lines):
            raise SurveyError(RUN_OF_DIGITS, file=file, line=line.line, start=line.text.strip()[:40])
        raise SurveyError(WRONG_DELIMITER, file=file, line=line.line, tried=names, start=line.text.strip()[:40])
    return best


def _meant(file: str, given: str) -> str:
    word = {name: sign for sign, name in DELIMITERS.items()}.get(given.lower(), given)
    word = {"space": " ", "\\t": "\t", "pipe": "|"}.get(word.lower(), word)
    if len(word) != 1 or not (word == "\t" or " " <= word <= "~") or word.isalnum() or word in "\"'.+-":
        raise SurveyError(BAD_DELIMITER, file=file, delimiter=given)
    return word


def _best(tried: Sequence[str], sample: Sample) -> Tuple[str, _Score]:
    best, best_score = "", (0, 0, False, 0, 0)
    for delimiter in tried:
        rows = [split_line(line.text, delimiter) or [] for line in sample.lines]
        score = _score(rows, delimiter)
        if score[4] and score > best_score:
            best, best_score = delimiter, score
    return best, best_score


def _score(rows: List[List[str]], delimiter: str) -> _Score:
    numbers = [sum(_weight(field, delimiter) for field in row[:_LOOKED_AT]) for row in rows]
    wide = sum(len(row) >= 3 for row in rows)
    most = Counter(map(len, rows)).most_common(1)[0][1]
    return header_fits(rows), sum(count >= 3 for count in numbers), most >= _STEADY * len(rows), sum(numbers), wide


def header_fits(rows: Sequence[Sequence[str]]) -> int:
    """Whether a line above the numbers names all three coordinates, and most lines have numbers or angles there: 2
    where most have as many columns too, 1 where not, 0 for no such line.
    """
    for at, row in enumerate(rows[:HEADER_WITHIN]):
        row = row[:_WORDS]
        if sum(is_value(field) for field in row[:_LOOKED_AT]) >= 2:
            return 0
        roles = roles_of_header(row) if len(row) >= 3 else {}
        places = [roles[role][0] for role in coordinates_of(roles) if role in roles]
        if len(places) == 3:
            below = rows[at + 1 :]
            good = sum(all(place < len(each) and is_value(each[place]) for place in places) for each in below)
            alike = sum(len(each) == len(rows[at]) for each in below)
            return (good > 0.5 * len(below)) * (1 + (alike > 0.5 * len(below)))
    return 0


def _weight(field: str, delimiter: str) -> int:
    """How many numbers a field counts for; an angle counts for more than its parts, which spaces may divide."""
    if is_number(field):
        # Blanks between three digits may part columns too.
        return int(" " not in field or delimiter not in " ," or "." in field)
    return _ANGLE_WEIGHT if is_marked_angle(field) and not is_time(field) else 0
