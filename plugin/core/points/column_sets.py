"""Files with several sets of coordinates, such as designed and measured ones: only the user can say which is meant."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Dict, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Text, message
from .columns import ROLES, Kind
from .features import Column
from .plan_columns import readings_of
from .questions import Answer, Question, Topic
from .reading import Case, Pair, is_value, word_of
from .recognition import Guess
from .vocabulary import each
from .words import fold, read_word

WHICH_SET = Text(
    "recognise.which_set",
    QT_TRANSLATE_NOOP("core", "{count} sets of columns hold coordinates of the same points: {sets}"),
)
WHICH_PARALLEL = Text(
    "recognise.which_parallel",
    QT_TRANSLATE_NOOP(
        "core",
        "column {column}, headed '{word}', may be the height, and so may column {other}, headed '{other_word}', which "
        "runs along with it",
    ),
)
TWO_HEADED = Text(
    "recognise.which_of_two",
    QT_TRANSLATE_NOOP("core", "columns {first} and {second} of line {line} are both headed {role}"),
)
#: Share of a coordinate's spread within which that of another set differs from it.
_ALIKE = 0.2
_LETTERS = {"e": "easting", "n": "northing", "r": "easting", "z": "height", "h": "height", "x": "x", "y": "y"}
_PLAN = ({"easting", "northing"}, {"longitude", "latitude"}, {"x", "y"})
#: Words of heights that nobody measured.
_DESIGN = frozenset(
    each("""design designed soll planned target theoretical theoretisch projet proyecto progetto proposed formation
    separation undulation geoid cut fill""")
)


class _Set(NamedTuple):
    """Role (or the letters x and y) to place, and the words beside these."""

    places: Dict[str, int]
    words: str


def which_of_several(
    case: Case, pairs: Sequence[Pair], heights: Sequence[Dict[str, int]], others: Dict[str, int],
    guesses: Sequence[Guess],
) -> List[Question]:  # fmt: skip
    """Which set of coordinates is meant, or which column of several with one word; each answer takes another."""
    found = _which_set(case, pairs, heights, others, guesses[0] if guesses else None)
    if found is not None:
        return [found]
    parallel = None
    if heights and guesses:
        role, place = next(iter(heights[0].items()))
        parallel = _which_parallel(case, pairs[0], place, [column - 1 for column in guesses[0].columns.values()])
    if parallel is not None:
        return [replace(parallel, answers=_parallel_answers(guesses[0], parallel))]
    look = case.look
    twice: List[Question] = []
    if look.mapped is not None or look.header is None:
        return twice
    for role, places in case.named.items():
        if len(places) > 1 and ROLES[role] in (Kind.COORDINATE, Kind.ANGLE):
            text = message(TWO_HEADED, line=look.header.line, first=places[0] + 1, second=places[1] + 1, role=role)
            able = [place for place in places if place < len(case.columns) and is_value(case.columns[place])]
            answers = [
                replace(guesses[0], columns={**guesses[0].columns, role: place + 1}).answer
                for place in able[:6]
                if guesses and role in guesses[0].columns
            ]
            twice.append(Question(Topic.TWICE, text, tuple(answers)))
    return twice


def _which_set(
    case: Case, pairs: Sequence[Pair], heights: Sequence[Dict[str, int]], others: Dict[str, int], guess: Optional[Guess]
) -> Optional[Question]:
    """The question which of several sets of coordinates of the same points is meant, None where there is one."""
    if case.look.mapped is not None or case.look.header is None:
        return None
    sets = [one for one in _sets(case.look.header.words) if _holds_values(case, one)]
    first = next((one for one in sets if pairs and set(pairs[0].places.values()) <= set(one.places.values())), None)
    first = first or next(iter(sets), None)
    alike = [one for one in sets if first is not None and (one is first or _same_points(case, first, one))]
    if len(alike) < 2:
        return None
    answers = []
    for one in alike:
        roles = _with_axes(case, one)
        high = {role: place for role, place in roles.items() if role == "height"} or next(iter(heights), {})
        plan = {role: place for role, place in roles.items() if role != "height"}
        taken = {**plan, **high}
        columns = {role: place for role, place in others.items() if place not in taken.values() and role not in taken}
        columns.update(taken)
        if high:
            order = sorted(columns, key=lambda role: columns[role])
            named = {role: columns[role] + 1 for role in order}
            made = Guess(named, None, case.units[0], 0.0, ()) if guess is None else replace(guess, columns=named)
            answers.append(replace(made.answer, reasons=()))
    said = "; ".join(", ".join(word_of(case, place) for place in sorted(one.places.values())) for one in alike)
    return Question(Topic.TWICE, message(WHICH_SET, count=len(alike), sets=said), tuple(answers)) if answers else None


def _sets(words: Sequence[str]) -> List[_Set]:
    found: Dict[str, Dict[str, int]] = {}
    for place, word in enumerate(words):
        role, beside = _parted(word)
        if role:
            key = beside
            while role in found.get(key, {}):
                key += " +"
            found.setdefault(key, {})[role] = place
    return [_Set(places, words) for words, places in found.items() if any(plan <= set(places) for plan in _PLAN)]


def _parted(word: str) -> Tuple[str, str]:
    """The coordinate that a header word names, and the words beside it; "" for none."""
    tokens = fold(re.sub(r"[\(\[{].*?[\)\]}]", " ", word)).split()
    numbers = [token for token in tokens if token.isdigit()]
    if not tokens or len(tokens) > 5:
        return "", ""
    if not numbers:
        role = _role(" ".join(tokens))
        if role:
            return role, ""
    for inner, outer in ((tokens[-1:], tokens[:-1]), (tokens[:1], tokens[1:]), (tokens[-2:], tokens[:-2])):
        role = _role(" ".join(inner))
        if role and outer:
            return role, " ".join(outer)
    return "", ""


def _role(word: str) -> str:
    said = read_word(word)
    role = "height" if said.role == "ellipsoidal_height" else said.role
    if role in ("easting", "northing", "longitude", "latitude", "height"):
        return role
    return _LETTERS.get(said.doubtful, "")


def _holds_values(case: Case, one: _Set) -> bool:
    places = [place for role, place in one.places.items() if role != "height"]
    return all(place < len(case.columns) and is_value(case.columns[place]) for place in places)


def _same_points(case: Case, first: _Set, other: _Set) -> bool:
    """Whether two sets run along with each other in plan, and are not one."""
    pairs = [(first.places[role], other.places[role]) for role in first.places if role in other.places]
    plan = [(a, b) for a, b in pairs if a != first.places.get("height")]
    return len(plan) == 2 and all(_along(case.columns[a], case.columns[b]) for a, b in plan)


def _along(one: Column, other: Column) -> bool:
    with np.errstate(invalid="ignore"):
        off = other.values - one.values
    off = off[np.isfinite(off)]
    if len(off) < 3 or one.span <= 0.0:
        return False
    return float(np.diff(np.percentile(off, [10, 90]))[0]) < _ALIKE * one.span


def _with_axes(case: Case, one: _Set) -> Dict[str, int]:
    """Role to place, x and y as the better reading has them."""
    if "x" not in one.places or "easting" in one.places:
        return {role: place for role, place in one.places.items() if role not in "xy"}
    columns = [case.columns[one.places[sign]] for sign in "xy"]
    best = next(iter(readings_of(case, columns)), None)
    plan = dict(zip(("easting", "northing"), (one.places["x"], one.places["y"]))) if best is None else best.places
    high = {"height": one.places["height"]} if "height" in one.places else {}
    return {**plan, **high}


def _which_parallel(case: Case, pair: Optional[Pair], place: int, taken: Sequence[int]) -> Optional[Question]:
    """The question which of two columns is the height, where one whose word is not known runs along with the named one
    at another level; None where none does.
    """
    if case.look.mapped is not None or place >= len(case.columns) or pair is None:
        return None
    named = case.columns[place]
    known = {at for places in case.named.values() for at in places} | set(taken) | set(case.xy)
    for other in case.columns:
        word = word_of(case, other.place)
        if other.place in known or not other.is_number or other.whole or not word or _DESIGN & set(fold(word).split()):
            continue
        level = abs(other.middle - named.middle)
        if 0.02 < level < 130.0 and named.span > 0.05 and other.span > 0.05 and _along(named, other):
            text = message(
                WHICH_PARALLEL, column=place + 1, word=word_of(case, place), other=other.place + 1, other_word=word
            )
            return Question(Topic.HEIGHT, text, ())
    return None


def _parallel_answers(guess: Guess, question: Question) -> Tuple[Answer, ...]:
    """The guess with the one column for the height, and with the other."""
    role = "height" if "height" in guess.columns else "ellipsoidal_height"
    both = [int(str(question.text.values[key])) for key in ("column", "other")]
    rest = {one: column for one, column in guess.columns.items() if one not in (role, "height")}
    return tuple(replace(guess, columns={**rest, "height": column}).answer for column in both)
