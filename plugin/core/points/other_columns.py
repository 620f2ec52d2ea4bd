"""What the columns beside the coordinates hold: name, code, time, and what a rover says of quality."""

from __future__ import annotations

from typing import Dict, List, Optional, Sequence, Set, Tuple

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from .columns import plain_word
from .features import MOST, Column
from .height_columns import like_sigma
from .reading import PLAN, Case, Pair, by_word
from .recognition import ColumnGuess
from .values import are_fixes
from .vocabulary import NO_CODES

COUNTS_UP = Text(
    "recognise.counts_up", QT_TRANSLATE_NOOP("core", "column {column} is the name: whole numbers that only grow")
)
ALL_DIFFER = Text("recognise.all_differ", QT_TRANSLATE_NOOP("core", "column {column} is the name: all texts differ"))
REPEATS = Text("recognise.repeats", QT_TRANSLATE_NOOP("core", "column {column} is the code: a few texts repeat"))
LOOKS_LIKE = Text(
    "recognise.looks_like", QT_TRANSLATE_NOOP("core", "the values of column {column} are such as {role} has")
)


def other_roles(
    case: Case, pair: Optional[Pair], heights: Sequence[Dict[str, int]]
) -> Tuple[Dict[str, int], Tuple[Message, ...]]:
    """Role to position of all but the coordinates that are used."""
    taken = set(pair.places.values()) if pair else set()
    taken |= set(heights[0].values()) if heights else set()
    used = set(pair.roles if pair else ()) | set(heights[0] if heights else ())
    found = {role: places[0] for role, places in case.named.items() if role not in used and places[0] not in taken}
    if pair and pair.degrees:
        found = {role: place for role, place in found.items() if role not in PLAN}
    if pair is None:
        return found, ()
    found.update(_of_fixes(case, found, taken))
    if case.look.header is not None:
        return {**found, **_of_unknown_words(case, found, taken)}, ()
    free = [column for column in case.columns if column.place not in taken]
    before, behind = min(taken), max(taken)

    def _text(column: Column) -> bool:
        return column.is_text and len(case.look.rows) > 4

    # A name stands before the coordinates if it can, a code behind them.
    ahead = sorted(free, key=lambda column: (column.place > before, column.place))
    last = sorted(free, key=lambda column: (column.place < behind, column.place))
    tried: List[Tuple[str, Text, Optional[Column]]] = [
        ("name", COUNTS_UP, next((column for column in ahead if column.counts and not _since_1970(column)), None)),
        ("name", ALL_DIFFER, next((column for column in ahead if _text(column) and column.distinct > 0.95), None)),
        ("code", REPEATS, next((column for column in last if _text(column) and column.distinct < 0.5), None)),
        ("code", REPEATS, _code_of_numbers(case, free, behind)),
        ("time", LOOKS_LIKE, next((column for column in free if column.clock >= MOST and not column.is_date), None)),
        ("time", LOOKS_LIKE, next((column for column in free if _since_1970(column)), None)),
        ("date", LOOKS_LIKE, next((column for column in free if column.is_date), None)),
    ]  # fmt: skip
    if tried[1][2] is not None and tried[1][2].place < before:
        tried[0], tried[1] = tried[1], tried[0]  # beside a name an index is none
    reasons = []
    for role, why, column in tried:
        if column is not None and role not in found and column.place not in found.values():
            found[role] = column.place
            reasons.append(message(why, column=column.place + 1, role=role))
    return found, tuple(reasons)


def _of_fixes(case: Case, found: Dict[str, int], taken: Set[int]) -> Dict[str, int]:
    """A column without a known word that holds nothing but words for the quality of positions."""
    known = {place for places in case.named.values() for place in places} | taken
    for column in case.columns if "fix" not in found else ():
        if column.place not in known and column.is_text:
            fields = {row[column.place].strip() for row in case.look.rows.fields if column.place < len(row)}
            if are_fixes(sorted(fields - {""})):
                return {"fix": column.place}
    return {}


def _of_unknown_words(case: Case, found: Dict[str, int], taken: Set[int]) -> Dict[str, int]:
    """Name and code under words of a language that is not known: a first column of which all differ, and the only one
    of a few texts that repeat.
    """
    known = {place for places in case.named.values() for place in places} | taken
    free = [column for column in case.columns[: len(case.words)] if column.place not in known]
    free = [column for column in free if not case.words[column.place].doubtful]
    more: Dict[str, int] = {}
    first = free[0] if free and free[0].place == 0 and taken and min(taken) > 0 else None
    differs = first is not None and (first.counts or (first.is_text and first.distinct > 0.95))
    if "name" not in found and first is not None and differs and not _since_1970(first):
        more["name"] = 0
    texts = [column for column in free if column.is_text and 0 < column.distinct < 0.5 and column.filled > 0.1]
    texts = [column for column in texts if column.place != more.get("name")]
    words = case.look.header.words if case.look.header is not None else ()
    no_codes = {place for place, word in enumerate(words) if plain_word(word) in NO_CODES}
    texts = [column for column in texts if column.place not in no_codes]
    if "code" not in found and len(texts) == 1 and not _is_one_text(case, texts[0].place):
        more["code"] = texts[0].place
    return more


def _is_one_text(case: Case, place: int) -> bool:
    """Whether a column holds the same text in every line, as one of jobs or people does."""
    return len({row[place].strip() for row in case.look.rows.fields if place < len(row)} - {""}) < 2


def _code_of_numbers(case: Case, free: Sequence[Column], behind: int) -> Optional[Column]:
    """A column of whole numbers that repeat, right behind the coordinates and the last of all, as codes of numbers
    are; others may be counts of a receiver.
    """
    if len(case.look.rows) <= 4 or not free:
        return None
    last = free[-1]
    fits = last.is_number and last.whole and last.decimals == 0 and last.distinct < 0.5 and last.span > 0
    return last if fits and last.place == behind + 1 == len(case.columns) - 1 else None


def _since_1970(column: Column) -> bool:
    """Whether whole numbers are seconds, milliseconds or microseconds since 1970, of the years 1990 to 2100."""
    good = column.good
    if not (column.is_number and len(good) > 2):
        return False
    return any(bool(((good > 6.3e8 * size) & (good < 4.1e9 * size)).all()) for size in (1.0, 1e3, 1e6))


def column_guesses(case: Case, place: int) -> Tuple[ColumnGuess, ...]:
    """What one column may hold, ranked."""
    worded = [role for role, places in case.named.items() if place in places]
    number = place + 1
    if worded:
        return tuple(ColumnGuess(number, role, 0.95, by_word(case, role, place)) for role in worded)
    if place in case.xy:
        roles = PLAN if place == case.xy[0] else PLAN[::-1]
        return tuple(
            ColumnGuess(number, role, share, by_word(case, role, place)) for role, share in zip(roles, (0.7, 0.3))
        )
    if place >= len(case.columns):
        return ()
    likely = _likely_roles(case.columns[place])
    told = [ColumnGuess(number, role, share, message(LOOKS_LIKE, column=number, role=role)) for role, share in likely]
    return tuple(sorted(told, key=lambda guess: -guess.likelihood))


def _likely_roles(column: Column) -> List[Tuple[str, float]]:
    """Roles whose usual values the column's are like, from the ranges a rover gives (common practice, no source)."""
    good = column.good
    if column.is_angle:
        north = bool(column.letters & set("NS"))
        return (
            [("latitude", 0.9)]
            if north
            else [("longitude", 0.9)]
            if column.letters
            else [("latitude", 0.5), ("longitude", 0.5)]
        )
    if column.clock >= 0.8 or _since_1970(column):
        return [("time", 0.8)]
    if column.is_text:
        return [("code", 0.6), ("name", 0.3)] if column.distinct < 0.5 else [("name", 0.6), ("code", 0.3)]
    if not column.is_number or not len(good):
        return []
    least, most = float(good.min()), float(good.max())
    if column.whole:
        tries = [("name", column.counts), ("fix", least >= 0 and most <= 8), ("satellites", least >= 3 and most <= 60)]
        found = [(role, 0.6) for role, fits in tries if fits]
        return found or [("easting", 0.3), ("northing", 0.3), ("height", 0.2)]
    tries = [
        ("sigma_h", like_sigma(column)), ("sigma_v", like_sigma(column)), ("pdop", least >= 0.5 and most < 12),
        ("tilt", least >= 0 and most < 60 and column.decimals <= 2), ("pole_height", column.span == 0 and 1 < most < 5),
        ("height", least > -500 and most < 9000), ("easting", most > 1000 or column.span > 1),
        ("northing", most > 1000 or column.span > 1),
    ]  # fmt: skip
    fitting = [role for role, fits in tries if fits]
    return [(role, round(0.9 / len(fitting), 2)) for role in fitting]
