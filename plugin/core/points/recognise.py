"""Which column of a file holds what, from header words, from the values, and from where they would land.

Nothing is settled on likelihood alone. Columns are taken when the header names them, or when of all readings
of the values only one lands in the area of use of the CRS; otherwise the question is put to the user, with
the readings ranked.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Dict, List, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..units import LengthUnit
from .columns import ROLES, Kind, plain_word
from .detect import Sample, find_comment, find_header, settle_delimiter, shape_of, split_sample, take_sample
from .features import gather_rows, look_at_columns, usual_decimal
from .geographic import HeightKind
from .height_columns import height_kind, settle_height
from .landing import Landing
from .layout import TWO_COLUMNS, Header, Shape
from .length_units import settle_unit, unit_of_heights
from .other_columns import column_guesses, other_roles
from .plan_columns import settle_letter, settle_pair
from .questions import Question, Topic
from .reading import DEGREES, PLAN, Case, Look, Pair
from .recognition import Guess, Recognition
from .source import TextSource, load_text
from .words import read_word, roles_by_words

HEADER_FIRST = Text(
    "recognise.two_headed",
    QT_TRANSLATE_NOOP(
        "core",
        "columns {first} and {second} are both headed {role}; the first is read as that, the other is kept beside",
    ),
)
KIND_OPEN = Text(
    "recognise.kind_open",
    QT_TRANSLATE_NOOP(
        "core", "nothing says whether the heights are ellipsoidal or above a geoid; they are taken as they are"
    ),
)


def recognise(
    path: PathLike,
    *,
    delimiter: Optional[str] = None,
    decimal: Optional[str] = None,
    encoding: Optional[str] = None,
    header: Optional[bool] = None,
    comment: Optional[str] = "auto",
    crs: Optional[Any] = None,
    unit: Optional[LengthUnit] = None,
    height_unit: Optional[LengthUnit] = None,
) -> Recognition:
    """What the file at ``path`` holds, without reading it whole into points.

    ``crs``: a candidate (projected pyproj CRS), whose area of use decides what header and values leave open. The
    other arguments are what the user knows already, as in :func:`.delimited.read_points`. Raises SurveyError
    where there is no text with three columns.
    """
    source = load_text(path, encoding)
    mark = find_comment(source, comment)
    sample = take_sample(source, mark)
    sign = settle_delimiter(source.file, delimiter, sample)
    sample = split_sample(sample, sign)
    head = find_header(header, None, sample)
    shape = shape_of(sample, head, sign, source.file)
    return recognise_look(look_at(source, sample, sign, decimal, mark, head, shape, crs, unit, height_unit))


def look_at(
    source: TextSource, sample: Sample, delimiter: str, decimal: Optional[str], comment: str, header: Optional[Header],
    shape: Shape, crs: Optional[Any], unit: Optional[LengthUnit], height_unit: Optional[LengthUnit],
) -> Look:  # fmt: skip
    """The look at a file whose form is settled already."""
    first = [line.fields for line in sample.lines if header is None or line.line > header.line]
    rows = gather_rows(source, first, delimiter, comment)
    width = max(shape.width, len(header.words) if header else 0)
    mark = decimal if decimal in (".", ",") else usual_decimal(rows.fields)
    return Look(source, delimiter, str(mark), comment, header, rows, width, crs, unit, height_unit)


def recognise_look(look: Look) -> Recognition:
    """What the lines of ``look`` hold."""
    case = _case(look)
    questions = _two_headed(case)
    pairs, open_pair = settle_pair(case)
    questions += open_pair
    heights, height_reasons, open_height = settle_height(case, pairs[0] if pairs else None)
    questions += open_height
    others, other_reasons = other_roles(case, pairs[0] if pairs else None, heights)
    letter, open_letter = settle_letter(case, pairs[0] if pairs else None)
    questions += open_letter
    unit, unit_reasons, open_unit = settle_unit(case, pairs[0] if pairs else None)
    if not any(one.stops for one in questions) or not pairs:
        questions += open_unit
    kind = height_kind(case, heights)
    if pairs and pairs[0].degrees and kind is HeightKind.UNKNOWN:
        questions.append(Question(Topic.HEIGHT_KIND, message(KIND_OPEN), (), stops=False))
    reasons = (*height_reasons, *other_reasons, *unit_reasons)
    guesses = _guesses(case, pairs, heights, others, unit, reasons)
    return Recognition(
        look.source.file, look.delimiter, look.decimal, look.source.encoding, look.comment, look.header,
        guesses, tuple(_typed(questions, guesses)), tuple(column_guesses(case, place) for place in range(look.width)),
        kind, letter, _explicit(case), _notes(case),
    )  # fmt: skip


def _case(look: Look) -> Case:
    words = [read_word(word) for word in look.header.words] if look.header else []
    named, xy = roles_by_words(words)
    plain = [plain_word(word) for word in look.header.words] if look.header else []
    for role, places in named.items():
        own = [place for place in places if plain[place] == role]
        if own and ROLES[role] not in (Kind.COORDINATE, Kind.ANGLE):
            named[role] = own
    columns = look_at_columns(look.rows, look.width, look.decimal)
    crs = look.crs if look.crs is not None and look.crs.is_projected else None
    return Case(look, columns, words, named, xy, Landing(crs))


def _two_headed(case: Case) -> List[Question]:
    """Coordinates whose word stands over several columns."""
    look = case.look
    found = []
    for role, places in case.named.items():
        if len(places) > 1 and ROLES[role] in (Kind.COORDINATE, Kind.ANGLE) and look.header:
            text = message(
                TWO_COLUMNS, file=look.source.file, line=look.header.line, first=places[0] + 1, second=places[1] + 1,
                role=role,
            )  # fmt: skip
            found.append(Question(Topic.COLUMNS, text))
    return found


def _notes(case: Case) -> Tuple[Message, ...]:
    file = case.look.source.file
    return tuple(
        message(HEADER_FIRST, file=file, first=places[0] + 1, second=places[1] + 1, role=role)
        for role, places in case.named.items()
        if len(places) > 1 and ROLES[role] not in (Kind.COORDINATE, Kind.ANGLE)
    )


def _guesses(
    case: Case, pairs: Sequence[Pair], heights: Sequence[Dict[str, int]], others: Dict[str, int],
    unit: Optional[LengthUnit], reasons: Tuple[Message, ...],
) -> Tuple[Guess, ...]:  # fmt: skip
    made = []
    for pair in pairs[:6]:
        free = heights if heights else [{}]
        for rank, height in enumerate(each for each in free if not set(each.values()) & set(pair.places.values())):
            roles = {**others, **pair.places, **height}
            order = sorted(roles, key=lambda role: roles[role])
            columns = {role: roles[role] + 1 for role in order if role in ROLES}
            plan = None if pair.degrees else unit
            made.append(
                (pair.score - rank, columns, plan, unit_of_heights(case, height, unit), (*pair.reasons, *reasons))
            )
    weights = np.exp([min(one[0], 50.0) for one in made]) if made else np.zeros(0)
    return tuple(
        Guess(columns, plan, rise, round(float(weight / weights.sum()), 4), why)
        for weight, (_, columns, plan, rise, why) in zip(weights, made)
    )


def _typed(questions: Sequence[Question], guesses: Sequence[Guess]) -> List[Question]:
    """Questions about columns with the guesses as answers."""
    whole = [guess for guess in guesses if {"height", "ellipsoidal_height"} & set(guess.columns)]
    typed = []
    for one in questions:
        fitting = whole
        if one.topic is Topic.HEIGHT and guesses:
            fitting = [guess for guess in whole if _plan_of(guess) == _plan_of(guesses[0])]
        answers = tuple(guess.answer for guess in fitting[:4])
        asks = one.topic in (Topic.COLUMNS, Topic.AXES, Topic.DEGREES, Topic.HEIGHT)
        typed.append(replace(one, answers=answers) if asks and not one.answers else one)
    return typed


def _plan_of(guess: Guess) -> Tuple[Optional[int], ...]:
    return tuple(guess.columns.get(role) for role in (*PLAN, *DEGREES))


def _explicit(case: Case) -> bool:
    """Whether the header alone names all three coordinates."""
    plan = any(all(role in case.named for role in roles) for roles in (PLAN, DEGREES))
    return plan and ("height" in case.named or "ellipsoidal_height" in case.named)
