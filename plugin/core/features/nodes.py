"""What lines are made of: candidates of passes that cross and places of passes that run along, in one table."""

from __future__ import annotations

from dataclasses import dataclass, fields
from typing import List, Tuple

import numpy as np

from .alongside import ON_LINE, Runs
from .candidates import STEP, Candidates
from .gates import BESIDE
from .passes import Passes

_WIDE = 2 * BESIDE + 1


@dataclass(frozen=True)
class Nodes:
    """n places where a line may run.

    ``kind, x, y, sigma, t``: as of ``Candidates``, ``size`` unsigned. ``ex, ey``: (n,) direction across the line in
    which the place is free; the ground rises along it at a step, or is steeper there at a bend where ``sided``.
    ``edges, chance``: gates as of ``Places``. ``leg``: (n,) number of the pass. ``point, other``: (n,) walk points
    before and after the place (of two passes where ``along``). ``along``: (n,) bool, from a run along the line.
    ``decades``: (n,) what a place of a run or a reading tells; 0 for candidates. ``fine``: (n,) bool, the size is
    well measured. ``height, height_var``: (n,) height of a bend and its variance where a
    section gives them, else nan; of a step its foot, where an outline does, ``rise`` (n,) the height of the step there.
    """

    kind: np.ndarray
    x: np.ndarray
    y: np.ndarray
    ex: np.ndarray
    ey: np.ndarray
    size: np.ndarray
    t: np.ndarray
    sigma: np.ndarray
    sided: np.ndarray
    edges: np.ndarray
    chance: np.ndarray
    leg: np.ndarray
    point: np.ndarray
    other: np.ndarray
    along: np.ndarray
    decades: np.ndarray
    fine: np.ndarray
    height: np.ndarray
    height_var: np.ndarray
    rise: np.ndarray

    def __len__(self) -> int:
        return len(self.kind)

    def take(self, which: np.ndarray) -> Nodes:
        """Some of them."""
        return Nodes(*(getattr(self, column.name)[which] for column in fields(self)))


def no_gates(n: int) -> Tuple[np.ndarray, np.ndarray]:
    """Gates of ``n`` places that are none, as of ``Nodes``."""
    return np.zeros((n, _WIDE + 1)), np.zeros((n, _WIDE))


def join_nodes(parts: List[Nodes]) -> Nodes:
    """All nodes of several tables."""
    return Nodes(*(np.concatenate([getattr(part, c.name) for part in parts]) for c in fields(Nodes)))


def nodes_of_candidates(passes: Passes, found: Candidates, edges: np.ndarray, chance: np.ndarray) -> Nodes:
    """The candidates as nodes; directions turned so that the ground rises (or is steeper) along them."""
    side = found.side
    turn = np.where(side < 0, -1.0, 1.0)
    back = turn < 0
    edges, chance = edges.copy(), chance.copy()
    edges[back] = -edges[back][:, ::-1]
    chance[back] = chance[back][:, ::-1]
    after = np.minimum(found.gate + 1, len(passes) - 1)
    unknown = np.full(len(found), np.nan)
    return Nodes(
        kind=found.kind, x=found.x, y=found.y, ex=found.ex * turn, ey=found.ey * turn, size=np.abs(found.size),
        t=found.t, sigma=found.sigma, sided=side != 0, edges=edges, chance=chance, leg=passes.leg[found.gate],
        point=found.gate, other=after, along=np.zeros(len(found), bool), decades=np.zeros(len(found)),
        fine=found.t > 3.0, height=unknown, height_var=unknown, rise=unknown,
    )  # fmt: skip


def nodes_of_runs(passes: Passes, runs: Runs) -> Nodes:
    """The places of runs as nodes: of a step between the two passes, of a bend on the pass."""
    i, j = runs.point, runs.other
    n = len(i)
    step = runs.kind == STEP
    dx, dy = passes.x[j] - passes.x[i], passes.y[j] - passes.y[i]
    wide = np.maximum(np.hypot(dx, dy), 0.02)
    edges, chance = no_gates(n)
    half = np.where(step, wide / 2, 0.0)
    edges[:, : BESIDE + 1] = -half[:, None]
    edges[:, BESIDE + 1 :] = half[:, None]
    chance[:, BESIDE] = step
    whole, unknown = np.ones(n, bool), np.full(n, np.nan)
    return Nodes(
        kind=runs.kind, x=(passes.x[i] + passes.x[j]) / 2, y=(passes.y[i] + passes.y[j]) / 2,
        ex=np.where(step, dx / wide, -passes.ey[i]), ey=np.where(step, dy / wide, passes.ex[i]),
        size=np.abs(runs.size), t=np.full(n, 5.0), sigma=np.where(step, wide / np.sqrt(12), ON_LINE), sided=step,
        edges=edges, chance=chance, leg=passes.leg[i], point=i, other=j, along=whole, decades=runs.decades, fine=whole,
        height=unknown, height_var=unknown, rise=unknown,
    )  # fmt: skip
