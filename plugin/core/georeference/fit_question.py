"""What is said of a fit to control that was judged: a statement where it may be used, a question where it may not."""

from __future__ import annotations

from typing import Any, Callable, List, Optional, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, Text, message
from ..points.questions import Answer, Question, QuestionError, Topic
from .fit_judgement import FitJudgement
from .fit_measure import Judged
from .fit_readings import AS_READ, FitReading

DOES_NOT_FIT = Text(
    "fit_question.does_not_fit",
    QT_TRANSLATE_NOOP(
        "core",
        "the survey does not fit the control points as they are read: scale {scale}, expected {expected}; largest "
        "residual {largest} m in plan, {height} m in height",
    ),
)
FITS_FAR_WORSE = Text(
    "fit_question.fits_worse",
    QT_TRANSLATE_NOOP(
        "core",
        "the survey fits the control points as they are read (scale {scale}, expected {expected}; largest residual "
        "{largest} m in plan, {height} m in height), but far better read otherwise",
    ),
)
NOTHING_FITS = Text(
    "fit_question.nothing_fits",
    QT_TRANSLATE_NOOP(
        "core",
        "the survey does not fit the control points: scale {scale}, expected {expected}; largest residual {largest} m "
        "in plan, {height} m in height; no mirrored survey, exchanged name or other unit explains it",
    ),
)
NO_HEIGHT = Text("fit_question.no_height", QT_TRANSLATE_NOOP("core", "–"))
KEEP_HEIGHTS = Text(
    "fit_question.keep_heights",
    QT_TRANSLATE_NOOP("core", "heights stay as they are, and only the plan is fitted"),
)
LEAVE_OUT = Text("fit_question.leave_out", QT_TRANSLATE_NOOP("core", "without {names} the others fit"))
FITS_SO = Text(
    "fit_question.fits_so",
    QT_TRANSLATE_NOOP("core", "scale {scale}, largest residual {largest} m in plan, {height} m in height"),
)
JUDGED = Text(
    "fit_question.judged",
    QT_TRANSLATE_NOOP(
        "core",
        "The fit was judged: scale {ppm} ppm from the expected one, largest residual {largest} m in plan with {limit} "
        "m allowed; no mirrored survey, exchanged name or other unit fits better.",
    ),
)
ON_HIS_WORD = Text(
    "fit_question.on_his_word",
    QT_TRANSLATE_NOOP(
        "core",
        "On the user's word the fit is used though it was judged not to fit: scale {scale}, expected {expected}; "
        "largest residual {largest} m in plan.",
    ),
)
READ_SO = Text("fit_question.read_so", QT_TRANSLATE_NOOP("core", "On the user's word control was read so: {reading}."))
UNDECIDED = Text(
    "fit_question.undecided",
    QT_TRANSLATE_NOOP(
        "core",
        "The control points fit as well if {reading}: with these points nothing tells it. Add a control point well off "
        "their line.",
    ),
)


def question(
    judgement: FitJudgement, file: str, expected: float, place: Callable[[FitReading], Optional[Message]],
    before: FitReading,
) -> QuestionError:  # fmt: skip
    """The refusal, with the readings that fit, the points to leave out, and at last the points as they are.

    ``place``: where the control puts the site under a reading. ``before``: the reading that was asked for and does
    not fit either.
    """
    as_read = judgement.as_read
    text = DOES_NOT_FIT if judgement.better or judgement.left_out else NOTHING_FITS
    if as_read.fits:
        text = FITS_FAR_WORSE
    here = place(FitReading())
    answers = [_answer(one, before, place(one.reading)) for one in judgement.better]
    answers += [_leave(names, here) for names in judgement.left_out]
    if as_read.plan_ok and not as_read.height_ok:
        answers.append(Answer("--control-heights", "keep", message(KEEP_HEIGHTS), place=here))
    if before == FitReading():
        answers.append(Answer("--control-as", AS_READ, FitReading().told, place=here))
    if not answers:
        answers.append(Answer("--control-as", AS_READ, FitReading().told, place=here))
    return QuestionError(file, [Question(Topic.CONTROL, message(text, **_figures(as_read, expected)), tuple(answers))])


def judged_said(judgement: FitJudgement, expected: float) -> Tuple[Message, ...]:
    """What the report says of a fit that is used."""
    one = judgement.as_read
    if not judgement.good:
        return (message(ON_HIS_WORD, **_figures(one, expected)),)
    ppm = 1e6 * (one.fit.scale / expected - 1.0)
    said: List[Message] = [
        message(
            JUDGED, ppm=Figure(f"{ppm:.0f}"), largest=Figure(f"{one.fit.largest:.3f}"), limit=Figure(f"{one.limit:.2f}")
        )
    ]
    said += [message(UNDECIDED, reading=reading.told) for reading in judgement.undecided[:2]]
    return tuple(said)


def _figures(one: Judged, expected: float) -> Any:
    return {
        "scale": Figure(f"{one.fit.scale:.4f}"), "expected": Figure(f"{expected:.4f}"),
        "largest": Figure(f"{one.fit.largest:.3f}"), "height": _height(one.height_off),
    }  # fmt: skip


def _height(off: float) -> Any:
    return Figure(f"{off:.3f}") if np.isfinite(off) else NO_HEIGHT


def _answer(one: Judged, before: FitReading, place: Optional[Message]) -> Answer:
    figures = _figures(one, 1.0)
    figures.pop("expected")
    reading = one.reading.after(before)
    return Answer("--control-as", reading.word, reading.told, (message(FITS_SO, **figures),), place)


def _leave(names: Tuple[str, ...], place: Optional[Message]) -> Answer:
    *first, last = names
    option = " ".join([word for name in first for word in ("--leave-out", name)] + ["--leave-out"])
    return Answer(option, last, message(LEAVE_OUT, names=", ".join(names)), place=place)
