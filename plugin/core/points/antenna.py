"""Heights of the antenna brought down to the ground: by pole height and antenna offset.

The ground lies below the point that heights are of by the pole (from the ground to the antenna's mount) and the
offset (from the mount to that point, the antenna's phase centre).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, Text, message
from .given import Given
from .questions import Answer, Question, Topic

COLUMN_OPEN = Text(
    "antenna.column_open",
    QT_TRANSLATE_NOOP(
        "core",
        "its column '{word}' seems to hold pole heights, and nothing says whether its heights are those of the ground "
        "or of the antenna",
    ),
)
LINE_OPEN = Text(
    "antenna.line_open",
    QT_TRANSLATE_NOOP(
        "core",
        "a line of it says a pole height, and nothing says whether its heights are those of the ground or "
        "of the antenna",
    ),
)
OPTION_OPEN = Text(
    "antenna.option_open",
    QT_TRANSLATE_NOOP(
        "core",
        "a pole height or antenna offset is given, and nothing says whether its heights are those of the ground or of "
        "the antenna",
    ),
)
LOG_OPEN = Text(
    "antenna.log_open",
    QT_TRANSLATE_NOOP(
        "core", "its heights are those of the antenna, and nothing says how high it stood above the ground"
    ),
)
NO_POLE = Text(
    "antenna.no_pole",
    QT_TRANSLATE_NOOP(
        "core", "its heights are said to be those of the antenna, and nothing says how high it stood above the ground"
    ),
)
DEPTH_OPEN = Text(
    "antenna.depth_open",
    QT_TRANSLATE_NOOP(
        "core",
        "its header or a line of words says depths or heights that count down, and nothing says whether they are",
    ),
)
DOWN = Text("antenna.down", QT_TRANSLATE_NOOP("core", "depths that count down: the height is 0 less the depth"))
UP = Text("antenna.up", QT_TRANSLATE_NOOP("core", "heights of the ground, counted up, whatever the words say"))
UPSIDE_DOWN = Text(
    "antenna.upside_down", QT_TRANSLATE_NOOP("core", "{file}: depths became heights: 0 less the depth, as said.")
)
GROUND = Text("antenna.ground", QT_TRANSLATE_NOOP("core", "heights of the ground already"))
LOWERED = Text(
    "antenna.lowered", QT_TRANSLATE_NOOP("core", "heights of the antenna, to be lowered by the pole heights")
)
POLE = Text("antenna.pole", QT_TRANSLATE_NOOP("core", "the height of your pole in metres, in place of this example"))
KEPT = Text("antenna.kept", QT_TRANSLATE_NOOP("core", "heights of the antenna, kept as they are"))
DONE = Text(
    "antenna.done",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: heights of the antenna were lowered to the ground by {least} m, the pole height {said}, and an "
        "antenna offset of {offset} m.",
    ),
    metric=True,  # as the options are
)
DONE_RANGE = Text(
    "antenna.done_range",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: heights of the antenna were lowered to the ground by {least} to {most} m, the pole heights {said}, "
        "and an antenna offset of {offset} m.",
    ),
    metric=True,
)
STAY = Text(
    "antenna.stay",
    QT_TRANSLATE_NOOP(
        "core", "{file}: heights are those of the antenna, above the ground by the pole height, as said."
    ),
)
ON_GROUND = Text(
    "antenna.on_ground", QT_TRANSLATE_NOOP("core", "{file}: heights are those of the ground already, as said.")
)
LACKING = Text(
    "antenna.lacking",
    QT_TRANSLATE_NOOP(
        "core", "{file}: {count} points have no pole height; the one before them counts, else the one behind."
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "{file}: one point has no pole height; the one before it counts, else the one behind."
    ),
)
BY_OPTION = Text("antenna.by_option", QT_TRANSLATE_NOOP("core", "as given"))
BY_COLUMN = Text("antenna.by_column", QT_TRANSLATE_NOOP("core", "of the file's column"))
BY_LINE = Text("antenna.by_line", QT_TRANSLATE_NOOP("core", "of a line of the file"))
BY_SENTENCE = Text("antenna.by_sentence", QT_TRANSLATE_NOOP("core", "of the log's own lines"))

_EXAMPLE = "2.000"
#: A change of the pole, metres, that tells whether heights follow it; how many are needed, and how clearly.
_CHANGE, _CHANGES, _CLEARLY = 0.1, 3, 4.0


@dataclass(frozen=True)
class PoleHeights:
    """Pole heights (n,) in metres of the points of a file, nan where not said, who says them (a Text), and the header
    word or number of their column.
    """

    metres: np.ndarray
    said: Text
    word: str = ""


@dataclass(frozen=True)
class Ground:
    """``height``: (n,) metres; ``lowered``: by how much (n,), None for nothing; ``statement``: what was done to
    heights; ``notes``: what to tell.
    """

    height: np.ndarray
    statement: Optional[Message] = None
    notes: Tuple[Message, ...] = ()
    question: Optional[Question] = None
    lowered: Optional[np.ndarray] = None


def to_ground(
    file: str, height: np.ndarray, given: Given, poles: Optional[PoleHeights], of: str, log: bool,
    plan: Optional[Tuple[np.ndarray, np.ndarray]] = None,
) -> Ground:  # fmt: skip
    """Heights (n,) metres as those of the ground, or the question what they are.

    ``poles``: what the file says of its pole; ``of``: "antenna", "ground" or "depth" where the header says it.
    ``log``: heights of a receiver are of its antenna unless the user says that it lowered them. ``plan``: eastings and
    northings, for how heights follow the pole.
    """
    if of == "depth" and not given.heights_of:
        return Ground(height, question=_depths())
    if given.heights_of == "depth":
        return Ground(-height, message(UPSIDE_DOWN, file=file))
    of = given.heights_of or ("antenna" if log else of)
    option = given.pole_height is not None or given.antenna_offset is not None
    if of == "ground" or (not of and not option and poles is None):
        return Ground(height, notes=(message(ON_GROUND, file=file),) if log else ())
    if not of:
        if not option and poles is not None and _follows_ground(height, poles.metres, plan):
            return Ground(height)
        if poles is not None and not option and poles.said is not BY_LINE:
            return Ground(height, question=_ground_or_antenna(message(COLUMN_OPEN, word=poles.word)))
        open_ = OPTION_OPEN if poles is None or option else LINE_OPEN
        return Ground(height, question=_ground_or_antenna(message(open_)))
    if given.pole_height is not None:
        poles = PoleHeights(np.full(len(height), given.pole_height), BY_OPTION)
    elif given.antenna_offset is not None and (poles is None or not np.isfinite(poles.metres).any()):
        poles = PoleHeights(np.zeros(len(height)), BY_OPTION)
    kept = given.heights_of == "antenna" and not option
    if poles is None or not np.isfinite(poles.metres).any() or (log and kept):
        if kept:
            return Ground(height, notes=(message(STAY, file=file),) if log else ())
        return Ground(height, question=_which_pole(LOG_OPEN if log else NO_POLE))
    return _lowered(file, height, poles, given.antenna_offset or 0.0)


def _depths() -> Question:
    answers = (
        Answer("--heights-of", "depth", message(DOWN)),
        Answer("--heights-of", "ground", message(UP)),
    )
    return Question(Topic.ANTENNA, message(DEPTH_OPEN), answers)


def _which_pole(text: Text) -> Question:
    answers: Tuple[Answer, ...] = (
        Answer("--pole-height", _EXAMPLE, message(POLE), fill_in=True),
        Answer("--heights-of", "antenna", message(KEPT)),
    )
    answers = (*answers, Answer("--heights-of", "ground", message(GROUND)))
    return Question(Topic.ANTENNA, message(text), answers)


def _ground_or_antenna(text: Message) -> Question:
    answers = (
        Answer("--heights-of", "ground", message(GROUND)),
        Answer("--heights-of", "antenna", message(LOWERED)),
    )
    return Question(Topic.ANTENNA, text, answers)


def _follows_ground(height: np.ndarray, pole: np.ndarray, plan: Optional[Tuple[np.ndarray, np.ndarray]]) -> bool:
    """Whether heights stay where the pole changes between neighbours, clearly and several times."""
    step = np.diff(pole)
    changed = np.abs(step) > _CHANGE
    if plan is not None:
        with np.errstate(invalid="ignore"):
            changed &= np.hypot(np.diff(plan[0]), np.diff(plan[1])) < 10.0
    changed &= np.isfinite(step)
    if int(changed.sum()) < _CHANGES:
        return False
    rise = np.diff(height)[changed]
    as_ground, as_antenna = np.median(np.abs(rise)), np.median(np.abs(rise - step[changed]))
    return bool(as_ground * _CLEARLY < as_antenna)


def _lowered(file: str, height: np.ndarray, poles: PoleHeights, offset: float) -> Ground:
    metres, lacking = _filled(poles.metres)
    by = metres + offset
    least, most = float(by.min()), float(by.max())
    where = {"file": file, "said": poles.said, "offset": Figure(f"{offset:.3f}"), "least": Figure(f"{least:.3f}")}
    told = message(DONE, **where) if most - least < 5e-4 else message(DONE_RANGE, most=Figure(f"{most:.3f}"), **where)
    notes = (message(LACKING, file=file, count=lacking),) if lacking else ()
    return Ground(height - by, told, notes, lowered=by)


def _filled(metres: np.ndarray) -> Tuple[np.ndarray, int]:
    """Pole heights with those lacking taken from the point before, else behind; how many these were."""
    known = np.isfinite(metres)
    if known.all():
        return metres, 0
    at = np.maximum.accumulate(np.where(known, np.arange(len(metres)), -1))
    at = np.where(at < 0, int(np.argmax(known)), at)
    return metres[at], int((~known).sum())


def poles_by_line(said: Sequence[Tuple[int, float]], lines: np.ndarray) -> Optional[PoleHeights]:
    """The pole heights of points in ``lines`` (n,) from statements (line, metres) in order; the first one also counts
    before it.
    """
    if not said:
        return None
    at = np.array([line for line, _ in said])
    metres: List[float] = [value for _, value in said]
    which = np.maximum(np.searchsorted(at, lines, "right") - 1, 0)
    return PoleHeights(np.array(metres)[which], BY_SENTENCE)
