"""How long work reports itself and how it is cancelled."""

from __future__ import annotations

from typing import Callable

#: Called as ``progress(fraction, stage)`` with fraction 0..1 and a short stage code such as
#: ``"points"`` or ``"surface"``. It may raise :class:`Cancelled`.
Progress = Callable[[float, str], None]


class Cancelled(Exception):
    """The user stopped the work."""


def silent(fraction: float, stage: str) -> None:
    """Report nothing."""


def part(progress: Progress, start: float, end: float) -> Progress:
    """A progress for one step that fills ``start``..``end`` of ``progress``."""

    def report(fraction: float, stage: str) -> None:
        progress(start + (end - start) * fraction, stage)

    return report


def named(stage: str, progress: Progress) -> Progress:
    """``progress`` told under the name of one ``stage``."""
    return lambda fraction, _: progress(fraction, stage)
